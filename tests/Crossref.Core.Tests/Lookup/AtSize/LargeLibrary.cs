using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>
/// Libraries of the size a shop may reach in decades: parts of three makers with several number schemes each, positions,
/// symptoms and bags. Some words and numbers are common and most are rare, as in life. The same count and seed give the
/// same library.
/// </summary>
public sealed class LargeLibrary
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static readonly string[] Standings = ["documented", "proven", "ran", "seated", "moulded", "measured", "offered", "told"];

    private readonly Random _random;
    private readonly HashSet<string> _taken = [];
    private readonly string[] _families;

    private LargeLibrary(int seed)
    {
        _random = new Random(seed);
        _families = [.. TradeWords.Makers.SelectMany(maker => "abcdefghjk".Select((letter, i) => $"{maker.ToLowerInvariant()}-{letter}{2 + (i * 7 % 10)}"))];
    }

    /// <summary>The entries of a library with so many parts; a third as many again are positions, bags and the like.</summary>
    public static IReadOnlyList<LookupEntry> Entries(int parts, int seed = 1)
    {
        var made = new LargeLibrary(seed);
        return
        [
            .. Enumerable.Range(0, parts).Select(made.Part),
            .. Enumerable.Range(0, parts / 4).Select(made.Position),
            .. Enumerable.Range(0, parts / 20).Select(made.Bag),
            .. made._families.Select(Family),
            .. TradeWords.Symptoms.Select(Symptom),
        ];
    }

    private LookupEntry Part(int i)
    {
        var (kind, nouns) = Often(TradeWords.Kinds);
        var maker = Any(TradeWords.Makers);
        var place = Often(TradeWords.Places);
        var current = Number(maker);
        return new LookupEntry
        {
            Type = "part",
            Id = $"{kind}-{maker[..2].ToLowerInvariant()}-{i:00000}",
            Title = Capital($"{Often(nouns)}, {place}{Maybe(2, () => ", " + Any(TradeWords.Sides))}"),
            Page = $"parts/{i % 256:x2}/{kind}-{i:00000}.html",
            Detail = $"{current}, {maker}{Maybe(2, () => $", {_random.Next(3, 60)} × {_random.Next(8, 320)} mm")}",
            Kind = kind,
            Families = [.. Enumerable.Range(0, _random.Next(4)).Select(_ => Often(_families)).Distinct()],
            Standing = _random.Next(4) == 0 ? null : Often(Standings),
            Numbers = [.. Numbers(kind, maker, current)],
            Aliases = [.. Enumerable.Range(0, _random.Next(4) == 0 ? 1 : 0).Select(_ => $"{Any(TradeWords.Nicknames)} {Any(TradeWords.Features)}")],
            Text = $"{maker} {Any(TradeWords.Features)} {Prose(_random.Next(2, 14))}",
        };
    }

    private IEnumerable<LookupNumber> Numbers(string kind, string maker, string current)
    {
        yield return new LookupNumber(current, NumberRole.Number);
        if (_random.Next(3) == 0)
        {
            yield return new LookupNumber(Number(maker), NumberRole.Earlier);
        }

        if (_random.Next(4) == 0)
        {
            var other = Any(TradeWords.Makers);
            yield return new LookupNumber(Number(other), NumberRole.Also, _random.Next(6) == 0 ? null : other);
        }

        if (Generic(kind) is { } generic)
        {
            yield return new LookupNumber(generic, NumberRole.Generic);
        }
    }

    private LookupEntry Position(int i)
    {
        var family = _families[i % _families.Length];
        var assembly = TradeWords.Assemblies[i / _families.Length % TradeWords.Assemblies.Count];
        var (kind, nouns) = Often(TradeWords.Kinds);
        var place = Often(TradeWords.Places);
        var id = $"{family}/{Slug(assembly)}/{Slug(place)}-{kind}-{i}";
        return new LookupEntry
        {
            Type = "position",
            Id = id,
            Title = Capital($"{place} {nouns[0]}, {Any(TradeWords.Sides)}"),
            Page = $"positions/{id}.html",
            Detail = $"{Capital(family)}, {assembly}",
            Kind = kind,
            Families = [family],
            Standing = _random.Next(5) == 0 ? null : Often(Standings),
            Text = $"{assembly.Split(' ')[0]}/{Slug(place)} {Prose(_random.Next(6))}",
        };
    }

    private LookupEntry Bag(int i)
    {
        var (kind, nouns) = Often(TradeWords.Kinds);
        return new LookupEntry
        {
            Type = "bag",
            Id = $"b-{2005 + (i % 20)}-{i:000}",
            Title = $"Bag: {nouns[0]}, {Often(TradeWords.Places)}",
            Page = $"shelf.html#r-b-{i}",
            Detail = $"B{_random.Next(40)}, {_random.Next(1, 9)} left",
            Kind = kind,
            Text = Prose(_random.Next(5)),
        };
    }

    private static LookupEntry Family(string id) => new()
    {
        Type = "family",
        Id = id,
        Title = $"{Capital(id.Replace('-', ' '))} presses",
        Page = $"families/{id}.html",
        Families = [id],
    };

    private static LookupEntry Symptom((string Name, string Checks) symptom) => new()
    {
        Type = "symptom",
        Id = Slug(symptom.Name),
        Title = Capital(symptom.Name),
        Page = $"symptoms/{Slug(symptom.Name)}.html",
        Text = symptom.Checks,
    };

    // Two or three schemes a maker: old lists, new lists, and a third for what is bought in.
    private string Number(string maker)
    {
        while (true)
        {
            var number = maker switch
            {
                "Tarrock" => _random.Next(3) switch
                {
                    0 => $"T{_random.Next(1, 7)}-{_random.Next(1_000_000):000000}",
                    1 => $"TK{_random.Next(1, 4)}.{_random.Next(1000):000}.{_random.Next(1000):000}-{_random.Next(1, 6)}",
                    _ => $"{Any(Letters)}{Any(Letters)}{_random.Next(100_000):00000}",
                },
                "Velm" => _random.Next(2) == 0
                    ? $"VM-{_random.Next(100_000):00000}{Maybe(3, () => $"/{Any(Letters)}")}"
                    : $"{_random.Next(1, 10)}.{_random.Next(1000):000}.{_random.Next(10_000):0000}",
                _ => _random.Next(2) == 0
                    ? $"OS-{_random.Next(10_000):0000}-{_random.Next(20):00}"
                    : $"OS{_random.Next(10, 40)}-{_random.Next(10_000):0000}/{Any("LIORS")}",
            };
            if (_taken.Add(number))
            {
                return number;
            }
        }
    }

    private string? Generic(string kind) => kind switch
    {
        "bearing" => $"6{_random.Next(30):000}-{Any(["2RS", "ZZ", "C3"])}",
        "belt" => $"T5-{_random.Next(20, 120) * 5}",
        "lamp" => $"R7S-{_random.Next(200, 420)}-{_random.Next(3, 13) * 100}",
        _ => null,
    };

    private string Prose(int words) => string.Join(' ', Enumerable.Range(0, words).Select(_ => Often(TradeWords.Notes)));

    private string Maybe(int oneIn, Func<string> text) => _random.Next(oneIn) == 0 ? text() : "";

    private char Any(string of) => of[_random.Next(of.Length)];

    private T Any<T>(IReadOnlyList<T> of) => of[_random.Next(of.Count)];

    // The first of a list far more often than the last.
    private T Often<T>(IReadOnlyList<T> of)
    {
        var share = _random.NextDouble();
        return of[(int)(share * share * of.Count)];
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Slug(string text) => string.Join('-', TextFold.Words(text));
}

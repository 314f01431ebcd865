using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup;

/// <summary>A handful of entries to tell stories with, and random libraries to compare readers on.</summary>
public static class SampleLibrary
{
    private static readonly string[] Makers = ["Tarrock", "Velm", "Ostrin"];
    private static readonly string[] Kinds = ["bearing", "gear", "roller", "belt", "clutch", "lamp"];
    private static readonly string[] Places = ["fold", "feed", "exit", "fixing", "cut", "stack"];
    private static readonly string[] Extras =
        ["rear", "front", "upper", "lower", "grünlich", "flange", "felt", "steel", "narrow", "Ø12", "hub", "flanged"];

    private static readonly string[] Standings = ["documented", "proven", "ran", "told", "ruled out"];

    public static IReadOnlyList<LookupEntry> Bench { get; } =
    [
        Part("brg-os-1203", "Bearing, fold roller", "bearing") with
        {
            Numbers =
            [
                new("OS-1203-02", NumberRole.Number),
                new("OS-1203-01", NumberRole.Earlier),
                new("VM-0903", NumberRole.Also, "Velm"),
                new("6001-2RS", NumberRole.Generic),
            ],
            Aliases = ["roller race"],
            Detail = "12 × 28 × 8 mm",
            Families = ["ostrin-f2", "velm-c7"],
            Standing = "documented",
        },
        Part("brg-os-1303", "Bearing, feed roller", "bearing") with
        {
            Numbers = [new("OS-1303-01", NumberRole.Number), new("6001-2RS", NumberRole.Generic)],
            Families = ["ostrin-f2"],
            Text = "squeals when dry",
        },
        Part("gear-os-0432", "Gear, second fold roller", "gear") with
        {
            Numbers = [new("OS-0432-01", NumberRole.Number)],
            Aliases = ["fold pinion"],
            Families = ["ostrin-f2"],
        },
        Part("clt-vm-0110", "Feed clutch", "clutch") with
        {
            Numbers = [new("VM-0110", NumberRole.Number)],
            Families = ["velm-c7"],
        },
        new()
        {
            Type = "position",
            Id = "ostrin-f2/fold-head/roller-2-bearing-rear",
            Title = "Second fold roller bearing, rear side",
            Page = "p/ostrin-f2/fold-head/roller-2-bearing-rear.html",
            Kind = "bearing",
            Families = ["ostrin-f2"],
        },
        new() { Type = "symptom", Id = "squeal", Title = "Squeal", Page = "symptoms/squeal.html", Text = "bearing gear clutch" },
        new() { Type = "bag", Id = "b-2025-117", Title = "Bearing, pulled running", Page = "shelf.html#b-2025-117", Kind = "bearing" },
    ];

    public static LookupReader Open(IEnumerable<LookupEntry> entries, LookupLayout? layout = null) =>
        new(LookupIndex.Build(entries, layout).Text);

    /// <summary>A library of any size; the same seed gives the same one.</summary>
    public static IReadOnlyList<LookupEntry> Random(int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(i => RandomEntry(random, i))];
    }

    /// <summary>Queries of every sort, most of them about something in the library.</summary>
    public static IReadOnlyList<string> Queries(IReadOnlyList<LookupEntry> entries, int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(i => Query(random, entries[random.Next(entries.Count)], i % 14))];
    }

    public static string Spoil(Random random, string number)
    {
        const string alphabet = "ABCDEFGHJKMNPQRSTUVWXYZ0123456789";
        var at = random.Next(number.Length);
        var letter = alphabet[random.Next(alphabet.Length)];
        return random.Next(4) switch
        {
            0 => number.Remove(at, 1),
            1 => number.Insert(at, letter.ToString()),
            2 => number.Remove(at, 1).Insert(at, letter.ToString()),
            _ => at + 1 < number.Length ? $"{number[..at]}{number[at + 1]}{number[at]}{number[(at + 2)..]}" : number[..at],
        };
    }

    private static LookupEntry Part(string id, string title, string kind) => new()
    {
        Type = "part",
        Id = id,
        Title = title,
        Page = $"parts/{id}.html",
        Kind = kind,
    };

    private static LookupEntry RandomEntry(Random random, int i)
    {
        var kind = Pick(random, Kinds);
        var maker = Pick(random, Makers);
        var words = $"{Pick(random, Places)} {Pick(random, Extras)}";
        var entry = Part($"{kind}-{i}", $"{kind} {words}", kind) with
        {
            Detail = $"{random.Next(3, 40)} × {random.Next(3, 90)} mm",
            Families = [.. Enumerable.Range(0, random.Next(3)).Select(_ => $"{Pick(random, Makers)}-f{random.Next(1, 9)}").Distinct()],
            Standing = random.Next(3) == 0 ? null : Pick(random, Standings),
            Aliases = random.Next(3) == 0 ? [$"{Pick(random, Extras)} {kind}"] : [],
            Text = $"{maker} {Pick(random, Extras)} {Pick(random, Places)}",
        };
        if (random.Next(5) == 0)
        {
            return entry with { Type = random.Next(2) == 0 ? "position" : "symptom" };
        }

        var numbers = new List<LookupNumber> { new(Number(random, maker), NumberRole.Number) };
        if (random.Next(2) == 0)
        {
            numbers.Add(new(Number(random, maker), NumberRole.Earlier));
        }

        if (random.Next(3) == 0)
        {
            var other = Pick(random, Makers);
            numbers.Add(new(Number(random, other), NumberRole.Also, random.Next(4) == 0 ? null : other));
        }

        if (kind == "bearing")
        {
            numbers.Add(new($"6{random.Next(10):000}-2RS", NumberRole.Generic));
        }

        return entry with { Numbers = numbers };
    }

    private static string Number(Random random, string maker) => random.Next(4) switch
    {
        0 => $"{maker[..2]} {random.Next(10_000):0000}",
        1 => $"{(char)('A' + random.Next(26))}{random.Next(1_000_000)}/{(char)('A' + random.Next(26))}",
        _ => $"{maker[..2].ToUpperInvariant()}-{random.Next(10_000):0000}-{random.Next(20):00}",
    };

    private static string Query(Random random, LookupEntry entry, int sort)
    {
        var number = entry.Numbers.Count > 0 ? entry.Numbers[random.Next(entry.Numbers.Count)].Text : entry.Id;
        var words = entry.Title.Split(' ');
        var from = random.Next(number.Length);
        var piece = number.Substring(from, random.Next(1, number.Length - from + 1));
        return sort switch
        {
            0 => number,
            1 => number.ToLowerInvariant().Replace("0", "o", StringComparison.Ordinal),
            2 => number[..random.Next(1, number.Length)],
            3 or 4 => piece,
            5 or 6 => Spoil(random, number),
            7 => words[^1],
            8 => $"{words[0]} {words[1][..2]}",
            9 => $"{words[0]} {piece}",
            10 => $"{piece} {words[^1]} {words[1]}",
            11 => entry.Id,
            12 => $"{words[1]} {Spoil(random, number)}",
            _ => $"nowhere {words[^1]} gru",
        };
    }

    private static string Pick(Random random, string[] of) => of[random.Next(of.Length)];
}

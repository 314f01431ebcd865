using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Tests.Hostile;

namespace Crossref.Site.Tests.Sheets;

/// <summary>Parts and bags that say all they can, in texts that a spreadsheet would like to change.</summary>
internal sealed class RandomParts(int seed)
{
    private static readonly string[] Texts =
    [
        "007", "1E5", "2-1", "2026-02-11", "=1+1", "+1", "-1", "@x", "'quoted'", "'007", "\"=1", "a;b", "a|b", "a\\b", "a\\;b", "a, b", "x;=1", "5\" roller", "Mar 1", "TRUE", "#N/A",
        "Blechnüsse größer", "0", "1.0", "00", "12345678901234567890", "null", "~", "- a", "? b", "key: value", "# no comment", "[x]", "{y}", "*z", "&z", "!z", "%z", "`z", ">", "|", "yes",
        .. HostileText.Shown.Where(t => t.Trim().Length < 5_000),
    ];

    private static readonly Place Nowhere = new("random.yaml", 1, 1);
    private readonly Random _random = new(seed);

    internal IReadOnlyList<Part> Parts { get; private set; } = [];

    internal Library Library()
    {
        Parts = [.. Enumerable.Range(0, _random.Next(1, 12)).Select(Part)];
        var bags = Enumerable.Range(0, _random.Next(0, 8)).Select(Bag);
        return new Library(new LibraryRecord { Id = "ferry-lane", Place = Nowhere, Title = "Ferry Lane" }, [.. Parts, .. bags]);
    }

    private Part Part(int index) => new()
    {
        Id = $"part-{index}",
        Place = Nowhere,
        Retired = Chance(10),
        Kind = PartKind.All[_random.Next(PartKind.All.Count)],
        Name = Text(),
        Maker = Maybe(Text),
        // Numbers of one maker are unique, so each carries its part's.
        Numbers = [.. Some(() => Ref($"{Text()} N{index}")).DistinctBy(n => n.Id)],
        EarlierNumbers = [.. Some(() => Ref($"{Text()} E{index}"))],
        Also = [.. Some(() => new AlsoNumber(Text(), Ref($"{Text()} A{index}"), Chance(2) ? Ref("f2-parts-list") : null))],
        Aliases = [.. Some(Text)],
        SupersededBy = index > 0 && Chance(4) ? Ref($"part-{index - 1}") : null,
        Source = Chance(3) ? Ref("f2-parts-list") : null,
        Standard = Maybe(Text),
        Sizes = SizeName.All.Where(_ => Chance(6)).ToDictionary(s => s.Name, Size, StringComparer.Ordinal),
        Handed = Chance(4),
        Hand = Chance(4) ? "left" : null,
        Contains = index > 0 && Chance(4) ? [new KitItem(Ref($"part-{index - 1}"), _random.Next(1, 9))] : [],
        Life = Chance(3) ? new Count(_random.Next(1, 900_000), (CountUnit)_random.Next(3)) : null,
        Price = Chance(2) ? _random.Next(0, 10_000) / 100m : null,
        LeadDays = Chance(3) ? _random.Next(0, 60) : null,
        Safety = Chance(5),
        Note = Maybe(Text),
    };

    private Bag Bag(int index) => new()
    {
        Id = $"bag-{index}",
        Place = Nowhere,
        Retired = Chance(10),
        Part = Ref($"part-{_random.Next(Parts.Count)}"),
        Quantity = _random.Next(1, 20),
        Grade = (Grade)_random.Next(7),
        Bin = Maybe(Text),
        From = Chance(3) ? Ref("f2-parts-list") : null,
        Counter = Chance(2) ? new Count(_random.Next(0, 1_000_000), (CountUnit)_random.Next(3)) : null,
        Number = Maybe(Text),
        Date = _random.Next(4) switch { 0 => PartialDate.Unknown, 1 => new PartialDate(2025, 0, 0), 2 => new PartialDate(2025, 3, 0), _ => new PartialDate(2025, 3, 9) },
        TestedBy = Maybe(Text),
        Defect = Maybe(Text),
        Note = Maybe(Text),
    };

    private Size Size(SizeName name)
    {
        if (name.Measures is not { } dimension) return new Size(name.Words is [var word, ..] ? word : Text(), null);
        var text = dimension is Dimension.Angle or Dimension.Temperature && Chance(2) ? "-5" : Chance(2) ? "17.020" : "17.02 +/- 0.02";
        return QuantityParser.TryParse(text, dimension, out var quantity, out var problem) ? new Size(text, quantity) : throw new InvalidOperationException(problem);
    }

    private string Text() => Texts[_random.Next(Texts.Length)].Trim();

    private string? Maybe(Func<string> text) => Chance(2) ? text() : null;

    private List<T> Some<T>(Func<T> make) => [.. Enumerable.Range(0, _random.Next(0, 3)).Select(_ => make())];

    private bool Chance(int of) => _random.Next(of) == 0;

    private static Ref Ref(string id) => new(id, Nowhere);
}

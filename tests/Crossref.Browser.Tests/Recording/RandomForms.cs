using Crossref.Core.Records;

namespace Crossref.Browser.Tests.Recording;

/// <summary>Forms as people and others fill them in: mostly right, some with slips, some with texts that mean something in YAML.</summary>
internal sealed class RandomForms(Library library, int seed)
{
    private static readonly string[] Pieces =
    [
        ":", ": ", " #", ", ", "[", "]", "{", "}", "\"", "'", "\\", "|", ">", "&", "*", "!", "%", "@", "`", "- ", "--- ", "? ", "=", "~", "\t", "\n", " ", "  ",
        "null", "true", "0x1F", "007", "1e3", "17,02", "\u00e9", "\u00a0", "\u2013", "\u4e2d", "\u05d0", "\U0001F527", "collar", "turned down", "M. Orr", "<b>", "${x}", "\\u0041",
    ];

    private readonly Random _random = new(seed);

    internal Dictionary<string, string> Next()
    {
        var form = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["kind"] = "finding",
            ["machine"] = Mostly(Of(library.Machines.Keys.Append("")), "press-77"),
            ["at"] = Mostly(Of(library.Positions.Keys), Of(["", "nowhere/at/all", "Second fold roller bearing"])),
            ["part"] = Mostly(Of(library.Parts.Keys), Of(["", "XX-9-9", .. library.Parts.Values.SelectMany(p => p.Numbers.Select(n => n.Id)).Take(30)])),
            ["verdict"] = Mostly(Of(Words.All<Verdict>()), ""),
            ["basis"] = Mostly(Of(Words.All<Basis>().Where(w => w != "proven")), ""),
            ["count"] = Mostly(Of(["18000", "99", "100", "0", "1"]), Of(["", "18,000", "18 000", "-4", "4.0", "4.5", "1e5", "9999999999", "12 sheets", "000", "4."])),
            ["unit"] = Of(Words.All<CountUnit>()),
            ["change"] = Mostly(Text(), ""),
            ["orientation"] = Of(["", "", "flange: inboard", "flange: in \"board\", hub: out", "a b: c=d"]),
            ["neighbours"] = Of(["", "undamaged", "damaged"]),
            ["source"] = Mostly(Of(library.Sources.Keys.Concat(library.Repairs.Keys).Append("")), "no-such-source"),
            ["locator"] = Text(),
            ["by"] = Text(),
            ["date"] = Mostly(Of(["2026-11-25", "2026-11", "2026", "unknown", "2024-02-29", "2026-12-01", "2027"]), Of(["", "25.11.2026", "2026-02-30", "2026-13", "1800", "2026-1-1"])),
            ["note"] = Text(),
        };
        if (_random.Next(3) > 0 && library.Positions.GetValueOrDefault(form["at"]) is { } position)
            form["machine"] = Of(library.MachinesOf(position.Family).Select(m => m.Id).Append(""));
        return form;
    }

    internal string Text() => _random.Next(4) == 0 ? "" : string.Concat(Enumerable.Range(0, _random.Next(1, 6)).Select(_ => Of(Pieces)));

    private string Mostly(string right, string wrong) => _random.Next(12) == 0 ? wrong : right;

    private string Of(IEnumerable<string> words)
    {
        var all = words.ToList();
        return all[_random.Next(all.Count)];
    }
}

using Crossref.Core.Checking.Codes;
using Crossref.Core.Checking;
using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Tests.Planting;

/// <summary>
/// For every kind of value, what may be written there and what may not. References and ids are apart: whether they
/// are right depends on the rest of the library.
/// </summary>
internal static class ValueSamples
{
    /// <summary>Values that are read without a complaint.</summary>
    internal static IEnumerable<string> Good(ValueShape shape) => shape.Kind switch
    {
        ValueKind.Text => ["plain", "two words", "2217", "007", "4.50", "true", "false", "2026-02-11", "\"quoted\"", "'it''s'", "|\n    a line\n    and another", "yes", "null-valve"],
        ValueKind.Id => ["some-id", "a", "7", "007", "1203-02", "\"quoted\"", "true", Long(40)],
        ValueKind.Reference => [.. References(shape.Target), .. shape.Words],
        ValueKind.LocalAssembly => ["fold-head", "ostrin-f2/fold-head", "7"],
        ValueKind.LocalPosition => ["roller-2-gear", "fold-head/roller-2-gear", "ostrin-f2/fold-head/roller-2-gear", "7"],
        ValueKind.Word => [.. shape.Words, $"\"{shape.Words[0]}\""],
        ValueKind.OpenWord => shape.Words,
        ValueKind.Quantity => Quantities(shape),
        ValueKind.Number => [.. shape.Most == 1 ? ["0", "1", "0.5", "1.0", "\"0.25\""] : (string[])["0", "4", "4.50", "\"4.50\"", "007", "999999999.5", "1000000000"], Number(shape.Least)],
        ValueKind.Whole => ["1", "2", "18000", "007", "\"2\"", "1000000000", Number(shape.Least)],
        ValueKind.Life => ["400000 cycles", "1.5 hours", "0.5 sheets", "1  sheets", "\"9 hours\"", "1000000000 sheets"],
        ValueKind.Wait => ["0 min", "45 min", "1.5 h", "168 h", "167.9 h", "10080 min", "\"45  min\"", "-0 min"],
        ValueKind.TrueFalse => ["true", "false", "\"true\"", "'false'"],
        ValueKind.Date => ["2026-02-11", "2026-02", "2026", "unknown", "\"2026\"", "1900", "2199-12-31", "2024-02-29", "2000-02-29", "2025-11-30"],
        ValueKind.List => [.. Good(shape.Item!).Where(g => !g.Contains('\n', StringComparison.Ordinal)).Select(g => $"[{g}]"), "[]"],
        ValueKind.TextMap => ["{flange: inboard}", "{}", "{flange: inboard, side: 2, hub: true}", "{1: x}"],
        ValueKind.Sizes => [.. SizeName.All.SelectMany(SizesOf), "{}", "{bore: 12, outside: 28 mm}"],
        _ => [],
    };

    /// <summary>Values that are refused, each with what is reported.</summary>
    internal static IEnumerable<Sample> Bad(ValueShape shape)
    {
        foreach (var empty in (string[])["", "\"\"", "\" \""]) yield return new(empty, "empty value", ShapeCodes.NoValue);
        foreach (var form in Forms(shape)) yield return form;
        foreach (var sample in Own(shape)) yield return sample;
        if (shape.Kind is not (ValueKind.List or ValueKind.Map or ValueKind.TextMap or ValueKind.Sizes))
            yield return new("\"a\\x07b\"", "control character", FileCodes.ControlCharacter);
    }

    /// <summary>A word with a slip of the finger in it, which is none of the others.</summary>
    internal static string Misspelt(string word, IEnumerable<string> others)
    {
        string[] slips = [word + word[^1], word[..1] + word, word[..^1], word + "x"];
        return slips.First(s => s.Length > 0 && s != word && !others.Contains(s));
    }

    private static IEnumerable<Sample> Own(ValueShape shape) => shape.Kind switch
    {
        ValueKind.Id =>
        [
            .. Each("bad id", ShapeCodes.BadId, "Capital", "two words", "under_score", "dot.ted", "-first", "last-", "two--dashes", "ünder", "a/b", Long(41)),
            .. Each("device name", ShapeCodes.DeviceName, "con", "lpt1", "com9"),
        ],
        ValueKind.Word =>
        [
            new(Misspelt(shape.Words[^1], [.. shape.Words, .. shape.Reached]), "misspelt word", ShapeCodes.UnknownWord),
            new(shape.Words[0].ToUpperInvariant(), "misspelt word", ShapeCodes.UnknownWord),
            .. Each("unknown word", ShapeCodes.UnknownWord, "xyzzy-quux", "4", "true"),
            .. shape.Reached.Select(r => new Sample(r, "proven, written", ShapeCodes.ProvenWritten)),
        ],
        ValueKind.OpenWord => Each("unknown caution", ShapeCodes.UnknownCaution, "xyzzy-quux", "4"),
        ValueKind.Quantity => BadQuantities(shape),
        ValueKind.Number =>
        [
            .. Each("bad number", ShapeCodes.BadNumber, "four", "1e3", "0x10", "4 mm", "4.", ".5", "+4", "1 000", "\"4 \"", "12345678901234567"),
            .. Each("decimal comma", ShapeCodes.DecimalComma, "4,5", "\"0,5\""),
            .. Each("number out of range", ShapeCodes.OutOfRange, Number(shape.Least - 1), Number(shape.Least - 0.5m), $"\"{Number(shape.Least - 1)}\"", Number(shape.Most + 0.5m)),
        ],
        ValueKind.Whole =>
        [
            .. Each("bad number", ShapeCodes.BadNumber, "two", "1.5", "\"1.5\"", "1e3", "2 pieces", "1 000", "1,000", "4,5", "+2"),
            .. Each("number out of range", ShapeCodes.OutOfRange, Number(shape.Least - 1), $"\"{Number(shape.Least - 1)}\"", "1000000001"),
        ],
        ValueKind.Life => Each("bad life", ShapeCodes.BadQuantity, "400000", "0 cycles", "0.0 hours", "-5 cycles", "400000 prints", "400,000 cycles", "many cycles", "5cycles", "5 hours more", "cycles", "1000000001 sheets"),
        ValueKind.Wait => Each("bad waiting time", ShapeCodes.BadQuantity, "45", "45 minutes", "-5 min", "169 h", "168.5 h", "10081 min", "1,5 h", "a while", "1.5h", "99999 h"),
        ValueKind.TrueFalse => Each("neither true nor false", ShapeCodes.NotTrueOrFalse, "yes", "no", "on", "1", "0", "\"True\"", "perhaps"),
        ValueKind.Date =>
        [
            .. Each("impossible date", ShapeCodes.BadDate, "2026-02-30", "2026-02-29", "1900-02-29", "2026-13", "2026-13-01", "2026-00", "2026-04-31", "2026-01-00", "1899", "2200-01-01"),
            .. Each("bad date", ShapeCodes.BadDate, "11.02.2026", "11/02/2026", "2026-2-11", "26-02-11", "soon", "20260211", "2026-02-11-01", "2026-02-11T10:00:00", "Unknown"),
        ],
        ValueKind.TextMap =>
        [
            new("{flange: }", "empty value", ShapeCodes.NoValue), new("{flange: [a]}", "list for a single value", ShapeCodes.WrongForm),
            new("{flange: {a: b}}", "map for a single value", ShapeCodes.WrongForm), new("{flange: 17,02}", "decimal comma", ShapeCodes.DecimalComma),
        ],
        ValueKind.Sizes =>
        [
            new("{bore: 12, colour: red}", "unknown key", ShapeCodes.UnknownSize), new("{boer: 12}", "misspelt key", ShapeCodes.UnknownSize),
            new("{bore: 17,02}", "decimal comma", ShapeCodes.DecimalComma),
            .. SizeName.All.SelectMany(a => Bad(SizeShape(a)).Where(b => b.Raw is not "").Select(b => b with { Raw = $"{{{a.Name}: {Braced(b.Raw)}}}" })),
        ],
        _ => [],
    };

    private static IEnumerable<Sample> Forms(ValueShape shape) => shape.Kind switch
    {
        ValueKind.List when shape.Item is { Kind: ValueKind.Map, Short: null } => Each("single value for a list", ShapeCodes.WrongForm, "plain"),
        ValueKind.List when shape.Item!.Kind == ValueKind.Map => [],
        ValueKind.List =>
        [
            .. Good(shape.Item).Take(1).Select(g => new Sample(g, "single value for a list", ShapeCodes.WrongForm)),
            .. Each("map for a list", ShapeCodes.WrongForm, "{a: b}"),
        ],
        ValueKind.Map when shape.Short is not null => Each("list for a map", ShapeCodes.WrongForm, "[a, b]"),
        ValueKind.Map or ValueKind.TextMap or ValueKind.Sizes =>
            [.. Each("list for a map", ShapeCodes.WrongForm, "[a, b]"), .. Each("single value for a map", ShapeCodes.WrongForm, "plain", "7")],
        _ => [.. Each("list for a single value", ShapeCodes.WrongForm, "[a, b]", "[]"), .. Each("map for a single value", ShapeCodes.WrongForm, "{a: b}", "{}")],
    };

    private static IEnumerable<string> References(Target target)
    {
        if ((target & ~(Target.Position | Target.Assembly)) != 0) foreach (var id in (string[])["some-id", "7", "1203-02"]) yield return id;
        if ((target & Target.Position) != 0) yield return "ostrin-f2/fold-head/roller-2-gear";
        if ((target & Target.Assembly) != 0) yield return "ostrin-f2/fold-head";
        if ((target & Target.Claim) != 0) foreach (var id in (string[])["repair-1/roller", "repair-1/fold-head/roller"]) yield return id;
    }

    private static IEnumerable<string> SizesOf(SizeName attribute) => Good(SizeShape(attribute)).Where(g => !g.Contains('\n', StringComparison.Ordinal)).Select(g => $"{{{attribute.Name}: {g}}}");

    private static ValueShape SizeShape(SizeName attribute) => attribute.Measures is { } dimension
        ? Values.Quantity(dimension, dimension is Dimension.Angle or Dimension.Temperature ? -1000 : 0)
        : attribute.Name == "hand" ? Values.Word(["left", "right", "none", "clockwise", "anticlockwise"]) : Values.Text;

    private static IEnumerable<string> Quantities(ValueShape shape)
    {
        var units = UnitsOf(shape.Dimension);
        return
        [
            "17", "17.02", "\"17\"", "17 +/- 0.02", "17.02±0.02", "999999999.9", "1000000000", Number(shape.Least),
            .. units.SelectMany(u => new[] { $"17.5 {u}", $"17{u}", $"17 +/- 0.02 {u}", $"\" 17 {u} \"" }),
            .. shape.Least < 0 ? ["-17", "-0.5", $"-17 {units[0]}"] : Array.Empty<string>(),
            .. shape.Least == 1 ? ["0.5 kV", "0.001 kV", "1.5"] : Array.Empty<string>(),
            .. shape.Least == 0 ? ["0.001", "-0"] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<Sample> BadQuantities(ValueShape shape)
    {
        var unit = UnitsOf(shape.Dimension) is [var first, ..] ? " " + first : "";
        return
        [
            .. Each("decimal comma", ShapeCodes.DecimalComma, "17,02", "\"17,02\"", "17,02" + unit),
            .. Each("bad quantity", ShapeCodes.BadQuantity, "wide", "1e3", "17 +/- x", "17 - 18", "true", "17.", ".5", "\"17 17\"", "+17", "1000000001", "12345678901234567"),
            .. Each("wrong unit", ShapeCodes.BadQuantity, "17 furlong", shape.Dimension == Dimension.Length ? "17 V" : "17 mm", unit.Length > 1 ? "17" + unit.ToUpperInvariant() + "x" : "17 pieces"),
            .. shape.Least >= 0 ? Each("negative number", ShapeCodes.OutOfRange, "-1", "-0.5", "\"-1\"", "-17" + unit) : Each("number out of range", ShapeCodes.OutOfRange, "-1001", "-1000.5", "\"-1001\"", "-1001" + unit),
            .. shape.Least == 1 ? Each("number out of range", ShapeCodes.OutOfRange, "0", "0.9", "0 V", "0.0009 kV") : [],
        ];
    }

    private static string[] UnitsOf(Dimension dimension) => dimension switch
    {
        Dimension.Length => ["mm", "cm", "m", "in", "um", "µm"],
        Dimension.Temperature => ["°C", "C"],
        Dimension.Angle => ["°", "deg"],
        Dimension.Voltage => ["V", "kV"],
        Dimension.Power => ["W", "kW"],
        Dimension.Current => ["A", "mA"],
        Dimension.Resistance => ["ohm", "Ω", "kohm", "kΩ", "Mohm", "MΩ"],
        Dimension.Kelvin => ["K"],
        Dimension.SpringRate => ["N/mm"],
        Dimension.Torque => ["Nm", "N·m", "Ncm"],
        _ => [],
    };

    private static IEnumerable<Sample> Each(string mistake, DiagnosticCode code, params string[] raws) => raws.Select(r => new Sample(r, mistake, code));

    // In braces a plain comma ends the value.
    private static string Braced(string raw) => raw.Contains(',', StringComparison.Ordinal) && raw[0] is not ('"' or '[' or '{') ? $"\"{raw}\"" : raw;

    private static string Number(decimal number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Long(int length) => new('a', length);
}

using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>Two lamps beside each other, attribute by attribute.</summary>
internal static class LampComparison
{
    // The inputs that describe a lamp, and the sizes under which parts have them on record.
    private static IReadOnlyList<(string Input, string Size)> Attributes { get; } =
        [("volts", "volts"), ("watts", "watts"), ("lit", "lit-length"), ("length", "overall-length"), ("ends", "ends")];

    /// <summary>Adds the lines and says what they come to; nothing when no other lamp was written.</summary>
    internal static IEnumerable<string> Lay(List<WorkingLine> lines, CalculatorInputs inputs)
    {
        if (!Attributes.Any(a => inputs.Has("other-" + a.Input))) return [];
        List<string> differ = [], unknown = [];
        foreach (var (input, attribute) in Attributes)
        {
            var (one, other) = (Size(inputs, input), Size(inputs, "other-" + input));
            var compared = SizeBook.Compare(Kind, attribute, Known(one), Known(other));
            var name = attribute.Replace('-', ' ');
            var figure = compared.Agreement switch { Agreement.Agrees => "agree", Agreement.Differs => "differ", _ => "unknown" };
            lines.Add(new(name + " of both", figure, one is null || other is null ? "not written for both lamps" : $"{one.Text} and {other.Text}; {compared.How}"));
            if (compared.Agreement == Agreement.Differs) differ.Add(name);
            if (compared.Agreement == Agreement.Unknown) unknown.Add(name);
        }
        var rest = unknown.Count > 0 ? $" Unknown: {string.Join(", ", unknown)}." : "";
        return [(differ.Count > 0 ? $"Not a fit: the other lamp differs in {string.Join(", ", differ)}." : "No difference shows in what was written of both lamps, which decides nothing.") + rest];
    }

    /// <summary>The sizes that were written of the lamp, for looking among the parts on record.</summary>
    internal static Sought Sought(CalculatorInputs inputs) => new(Kind, Attributes.Where(a => inputs.Has(a.Input))
        .ToDictionary(a => a.Size, a => Size(inputs, a.Input)!, StringComparer.Ordinal));

    private static PartKind Kind => PartKind.Find("lamp")!;

    private static Size? Size(CalculatorInputs inputs, string name) =>
        inputs.Quantity(name) is { } quantity ? new Size(Shown.Of(Interval.Of(quantity), UnitTable.Symbols(quantity.Dimension).First()), quantity)
        : inputs.Text(name) is { } word ? new Size(word, null)
        : null;

    private static KnownSize? Known(Size? size) => size is null ? null : new KnownSize(size, SizeOrigin.Written);
}

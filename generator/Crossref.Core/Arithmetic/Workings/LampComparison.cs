using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>Two lamps beside each other, attribute by attribute.</summary>
internal static class LampComparison
{
    /// <summary>The inputs that describe a lamp, and the sizes under which parts have them on record.</summary>
    internal static IReadOnlyList<(string Input, string Size)> Attributes { get; } =
        [("volts", "volts"), ("watts", "watts"), ("lit", "lit-length"), ("length", "overall-length"), ("ends", "ends")];

    /// <summary>Adds the lines and says what they come to; nothing when no other lamp was written.</summary>
    internal static IEnumerable<string> Lay(List<WorkingLine> lines, CalculatorInputs inputs)
    {
        if (!Attributes.Any(a => inputs.Has("other-" + a.Input))) return [];
        List<string> differ = [], unknown = [];
        foreach (var (input, size) in Attributes)
        {
            var other = "other-" + input;
            var name = size.Replace('-', ' ');
            var figure = !inputs.Has(input) || !inputs.Has(other) ? "unknown"
                : inputs.Quantity(input) is { } one ? Compare(one, inputs.Quantity(other)!.Value)
                : inputs.Text(input)!.Equals(inputs.Text(other), StringComparison.OrdinalIgnoreCase) ? "agree" : "differ";
            lines.Add(new(name + " of both", figure, figure == "unknown" ? "not written for both lamps" : $"{Written(inputs, input)} and {Written(inputs, other)}"));
            if (figure == "differ") differ.Add(name);
            if (figure == "unknown") unknown.Add(name);
        }
        var rest = unknown.Count > 0 ? $" Unknown: {string.Join(", ", unknown)}." : "";
        return [(differ.Count > 0 ? $"Not a fit: the other lamp differs in {string.Join(", ", differ)}." : "No difference shows in what was written of both lamps, which decides nothing.") + rest];
    }

    private static string Compare(Quantity one, Quantity other)
    {
        var (a, b) = (Interval.Of(one), Interval.Of(other));
        if (a.Low > b.High + 1e-9 || b.Low > a.High + 1e-9) return "differ";
        return one.Uncertainty == 0 && other.Uncertainty == 0 ? "agree" : "no difference shown";
    }

    private static string Written(CalculatorInputs inputs, string name) =>
        inputs.Quantity(name) is { } quantity ? Shown.Of(Interval.Of(quantity), Unit(quantity.Dimension)) : inputs.Text(name)!;

    private static string Unit(Dimension dimension) => dimension switch { Dimension.Voltage => "V", Dimension.Power => "W", _ => "mm" };
}

using System.Globalization;

namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>One band of a table by nominal size: over one size up to and including another.</summary>
/// <param name="Name">What the values are for: a symbol of ISO 492, a clearance group.</param>
/// <param name="Over">In millimetres.</param>
/// <param name="Including">In millimetres.</param>
/// <param name="Micrometres">Lowest and highest value.</param>
public sealed record ToleranceBand(string Name, double Over, double Including, Interval Micrometres)
{
    /// <summary>"over 10 to 18 mm".</summary>
    public string Range => $"over {Figure.Number(Over, 1)} to {Figure.Of(Including, 1, "mm")}";

    /// <summary>The band of that name for a nominal size; null outside the table.</summary>
    internal static ToleranceBand? For(IEnumerable<ToleranceBand> bands, string name, double size) =>
        bands.FirstOrDefault(b => b.Name == name && size > b.Over + 1e-9 && size <= b.Including + 1e-9);

    internal static ToleranceBand From(string name, string over, string including, string low, string high) =>
        new(name, Number(over), Number(including), new Interval(Number(low), Number(high)));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

using System.Globalization;

namespace Crossref.Core.Quantities;

/// <summary>A measured or stated size in the unit of its <see cref="Quantities.Dimension"/>, with its measuring uncertainty.</summary>
/// <param name="Value">In the dimension's unit.</param>
/// <param name="Uncertainty">Half width of the interval that holds the true value 95 times in 100; 0 when not stated.</param>
/// <param name="Dimension">What it measures.</param>
public readonly record struct Quantity(decimal Value, decimal Uncertainty, Dimension Dimension)
{
    /// <summary>"17.02 ± 0.02 mm".</summary>
    public override string ToString()
    {
        var number = Value.ToString("0.####", CultureInfo.InvariantCulture);
        var width = Uncertainty == 0 ? "" : " ± " + Uncertainty.ToString("0.####", CultureInfo.InvariantCulture);
        var unit = UnitTable.Of(Dimension)[0].Symbol;
        return unit.Length == 0 ? number + width : $"{number}{width} {unit}";
    }
}

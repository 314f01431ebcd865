using System.Globalization;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Sizes the way pages show them, in millimetres or inches.</summary>
internal sealed class SizeText(bool inches)
{
    private const decimal MillimetresPerInch = 25.4m;

    internal string Unit => inches ? "in" : "mm";

    internal static string NameOf(string attribute) => SizeName.InWords(attribute);

    /// <summary>A size with its unit.</summary>
    internal string Of(string attribute, Size size)
    {
        var (value, unit) = Split(attribute, size);
        return unit.Length == 0 ? value : unit == "°" ? value + unit : value + " " + unit;
    }

    /// <summary>A size and its unit apart; the unit is empty for a word and for a plain number.</summary>
    internal (string Value, string Unit) Split(string attribute, Size size)
    {
        if (size.Quantity is not { } quantity) return (size.Text, "");
        if (Converts(attribute, quantity)) return (Number(quantity.Value / MillimetresPerInch, quantity.Uncertainty / MillimetresPerInch), "in");
        var text = quantity.ToString();
        var number = Number(quantity.Value, quantity.Uncertainty);
        return (number, text[Math.Min(number.Length, text.Length)..].Trim());
    }

    /// <summary>A length as a drawing shows it: the bare number in the unit of the page.</summary>
    internal string Bare(decimal millimetres) => Number(inches ? millimetres / MillimetresPerInch : millimetres, 0);

    /// <summary>A length with its unit.</summary>
    internal string Length(decimal millimetres) => Bare(millimetres) + " " + Unit;

    private bool Converts(string attribute, Quantity quantity) =>
        inches && quantity.Dimension == Dimension.Length && attribute != "module";

    private static string Number(decimal value, decimal width) => width == 0
        ? value.ToString("0.####", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{value:0.####} ± {width:0.####}");
}

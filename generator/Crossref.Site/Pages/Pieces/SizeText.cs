using System.Globalization;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Sizes the way pages show them, in millimetres or inches.</summary>
internal sealed class SizeText(bool inches)
{
    private const decimal MillimetresPerInch = 25.4m;

    // Names that are short to write and unclear to read. The module is a millimetre measure wherever it is used.
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["outside"] = "outside diameter", ["face"] = "face width", ["grease-temp"] = "grease temperature", ["temp"] = "temperature rating",
        ["helix"] = "helix angle", ["lit-length"] = "lit length", ["overall-length"] = "overall length", ["journal"] = "journal diameter",
        ["r25"] = "resistance at 25 °C", ["beta"] = "B value", ["trip"] = "trips at", ["amps"] = "current", ["volts"] = "voltage", ["watts"] = "power",
        ["free-length"] = "free length", ["wire"] = "wire diameter", ["pressure-angle"] = "pressure angle", ["rate"] = "spring rate",
    };

    internal string Unit => inches ? "in" : "mm";

    internal static string NameOf(string attribute) => Names.GetValueOrDefault(attribute) ?? attribute.Replace('-', ' ');

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

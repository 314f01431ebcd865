using System.Globalization;
using System.Text.RegularExpressions;

namespace Crossref.Core.Quantities;

/// <summary>Reads quantities the way people write them: <c>17</c>, <c>17.02 +/- 0.02</c>, <c>0.669 in</c>, <c>230 V</c>.</summary>
public static partial class QuantityParser
{
    // Far beyond any part, far below what a decimal can hold; so no later sum or product overflows.
    private const decimal Largest = 1_000_000_000m;

    /// <summary>
    /// Reads a quantity of one dimension; a number without a unit is in the dimension's own unit. On failure
    /// <paramref name="problem"/> says in words what is wrong and what to write instead.
    /// </summary>
    public static bool TryParse(string text, Dimension dimension, out Quantity quantity, out string problem)
    {
        quantity = default;
        problem = "";
        var match = Written().Match(text.Trim());
        if (!match.Success)
        {
            problem = Fraction().IsMatch(text) ? "write one number without a stroke, such as 0.5 for 1/2"
                : Range().IsMatch(text) ? "write a range as its middle and what it may be off, such as 235 +/- 5 for 230-240"
                : !CommaNumber().IsMatch(text) ? $"write a number{Example(dimension)}"
                : Grouped().IsMatch(text) ? $"write the number without commas: {text.Trim().Replace(",", "", StringComparison.Ordinal)}"
                : $"write the decimal point as a point: {text.Trim().Replace(',', '.')}";
            return false;
        }
        var symbol = match.Groups["unit"].Value;
        var unit = UnitTable.Of(dimension).FirstOrDefault(u => u.Symbol == symbol || symbol.Length == 0);
        if (unit is null)
        {
            var known = string.Join(", ", UnitTable.Of(dimension).Select(u => u.Symbol).Where(s => s.Length > 0));
            problem = known.Length == 0 ? "write a plain number without a unit" : $"the unit '{symbol}' is not known here; write one of {known}";
            return false;
        }
        if (!Number(match.Groups["value"].Value, out var value) || !Number("0" + match.Groups["width"].Value, out var width) || Math.Abs(value) > Largest || width > Largest)
        {
            problem = "the number is out of range; write one below a thousand million";
            return false;
        }
        quantity = new Quantity(value * unit.Factor, width * unit.Factor, dimension);
        return true;
    }

    /// <summary>Whether the text looks like a number with a comma, such as <c>17,02</c>.</summary>
    public static bool HasDecimalComma(string text) => CommaNumber().IsMatch(text);

    private static string Example(Dimension dimension)
    {
        var unit = UnitTable.Of(dimension)[0].Symbol;
        return unit.Length == 0 ? ", such as 17" : $", such as 17 or 17.02 +/- 0.02 {unit}";
    }

    private static bool Number(string text, out decimal value) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value);

    [GeneratedRegex(@"^(?<value>-?[0-9]{1,15}(\.[0-9]{1,12})?)\s*((\+/-|±)\s*(?<width>[0-9]{1,15}(\.[0-9]{1,12})?)\s*)?(?<unit>[^\s0-9.,+\-±/][^\s]*)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Written();

    [GeneratedRegex(@"^\s*-?[0-9]+,[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex CommaNumber();

    [GeneratedRegex(@"[,.][0-9]+[,.]", RegexOptions.CultureInvariant)]
    private static partial Regex Grouped();

    [GeneratedRegex(@"^\s*([0-9]+[\s-]+)?[0-9]+\s*/\s*[0-9]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Fraction();

    [GeneratedRegex(@"^\s*[0-9]+(\.[0-9]+)?\s*[-\u2013]\s*[0-9]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Range();
}

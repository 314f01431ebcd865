using System.Globalization;

namespace Crossref.Core.Arithmetic;

/// <summary>
/// A figure as people read it. The calculators of the site write the same text: both sides round the exact binary value,
/// half away from zero, and drop the noughts at the end.
/// </summary>
public static class Figure
{
    /// <summary>"0.79375", with at most so many decimals (0 to 9).</summary>
    public static string Number(double value, int decimals)
    {
        var text = IsHalf(value, decimals)
            ? Math.Round(decimal.Parse(Fixed(value, decimals + 1), CultureInfo.InvariantCulture), decimals, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture)
            : Fixed(value, decimals);
        if (text.Contains('.', StringComparison.Ordinal)) text = text.TrimEnd('0').TrimEnd('.');
        return text == "-0" ? "0" : text;
    }

    /// <summary>"12 mm".</summary>
    public static string Of(double value, int decimals, string unit) => WithUnit(Number(value, decimals), unit);

    /// <summary>"12 mm" when both ends read alike, else "11.9 to 12.1 mm".</summary>
    public static string Of(Interval interval, int decimals, string unit)
    {
        var (low, high) = (Number(interval.Low, decimals), Number(interval.High, decimals));
        return WithUnit(low == high ? low : $"{low} to {high}", unit);
    }

    // Exactly half way between two figures; there the framework rounds to the even digit. Half a digit has one binary place more than decimals.
    private static bool IsHalf(double value, int decimals) => Math.Abs(Math.ScaleB(value, decimals + 1) % 2) == 1;

    private static string Fixed(double value, int decimals) =>
        value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string WithUnit(string number, string unit) => unit.Length == 0 ? number : unit is "°" or "%" ? number + unit : $"{number} {unit}";
}

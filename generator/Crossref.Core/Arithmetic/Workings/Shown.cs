namespace Crossref.Core.Arithmetic.Workings;

/// <summary>Figures of any size with about four digits, which is more than a workshop's meter shows.</summary>
internal static class Shown
{
    /// <summary>"1072 ohm", "52.9 ohm", "0.054 to 0.112 times".</summary>
    internal static string Of(Interval figure, string unit) => Figure.Of(figure, Decimals(Math.Abs(figure.High)), unit);

    private static int Decimals(double size) => size >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 1 ? 3 : 4;
}

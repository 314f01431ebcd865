namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>
/// How a bearing's number writes its bore: DIN 623-1 as quoted by makers. 00, 01, 02, 03 are 10, 12, 15, 17 mm, from 04 it
/// is five times the code; below 10 mm it is the last figure; 22, 28, 32 mm and others follow a stroke. MR105 is 10 mm
/// outside, 5 mm bore.
/// </summary>
public static class BoreCode
{
    private static readonly int[] Small = [10, 12, 15, 17];

    /// <summary>The bore in millimetres that a number without prefix and letters writes.</summary>
    public static int Of(string number)
    {
        if (number.IndexOf('/', StringComparison.Ordinal) is > 0 and var stroke) return Figures(number[(stroke + 1)..]);
        if (LastFigure(number)) return number[^1] - '0';
        var code = Figures(number[^2..]);
        return code < 4 ? Small[code] : 5 * code;
    }

    /// <summary>Where the number says it: "bore code 01", "last figure of 608", "after the stroke".</summary>
    public static string Says(string number) =>
        number.Contains('/', StringComparison.Ordinal) ? "after the stroke" : LastFigure(number) ? $"last figure of {number}" : $"bore code {number[^2..]}";

    private static bool LastFigure(string number) => number.Length == 3 || number.StartsWith("MR", StringComparison.Ordinal);

    private static int Figures(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}

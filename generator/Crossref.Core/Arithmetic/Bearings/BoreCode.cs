namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>
/// Where a bearing's number writes its bore, by DIN 623-1 as quoted by makers: the code 00, 01, 02, 03 is 10, 12, 15, 17 mm,
/// from 04 it is five times the code; below 10 mm it is the last figure; 22, 28, 32 mm and others follow a stroke.
/// </summary>
public static class BoreCode
{
    /// <summary>"bore code 01", "last figure of 608", "after the stroke", for a number without prefix and letters.</summary>
    public static string Says(string number) =>
        number.Contains('/', StringComparison.Ordinal) ? "after the stroke"
        : number.Length == 3 || number.StartsWith("MR", StringComparison.Ordinal) ? $"last figure of {number}" : $"bore code {number[^2..]}";
}

using System.Numerics;
using System.Globalization;

namespace Crossref.Core.Records;

/// <summary>
/// A serial as ranges compare it: leading letters and a number. Letters compare without regard to case, because the
/// same plate is copied down both ways.
/// </summary>
internal readonly record struct Serial(string Letters, BigInteger Number)
{
    /// <summary>Reads letters followed by digits; null for any other form, which no range can compare.</summary>
    internal static Serial? Parse(string text)
    {
        text = text.Trim();
        var letters = text.TakeWhile(char.IsAsciiLetter).Count();
        var digits = text[letters..];
        return digits.Length > 0 && digits.All(char.IsAsciiDigit)
            ? new Serial(text[..letters].ToUpperInvariant(), BigInteger.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture))
            : null;
    }

    /// <summary>Below zero, zero or above zero as this one stands before, at or after the other; null when their letters differ.</summary>
    internal static int? Compare(string left, string right) =>
        Parse(left) is { } a && Parse(right) is { } b && a.Letters == b.Letters ? a.Number.CompareTo(b.Number) : null;
}

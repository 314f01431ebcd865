using System.Globalization;
using Crossref.Core.Quantities;
using Crossref.Core.Sizes;

namespace Crossref.Core.Checking.Rules;

/// <summary>
/// A length that differs by no more than a reading may be off, written without its uncertainty. It counts as exact, and a
/// bearing's bore is held to 8 µm, which no calliper reads.
/// </summary>
internal static class BareReading
{
    // Of a calliper in a workshop, in millimetres; common practice, no source.
    private const decimal Off = 0.02m;

    /// <summary>What to write instead; empty where that is not the mistake.</summary>
    internal static string Hint(SizeComparison compared) =>
        compared is { One: { Origin: SizeOrigin.Written, Size.Quantity: { Uncertainty: 0, Dimension: Dimension.Length } one }, Other.Size.Quantity: { } other } && Math.Abs(one.Value - other.Value) <= Off
            ? string.Create(CultureInfo.InvariantCulture, $"; a size without its uncertainty counts as exact, so if a calliper read it, write {compared.Attribute}: {one.Value:0.####} +/- 0.02")
            : "";
}

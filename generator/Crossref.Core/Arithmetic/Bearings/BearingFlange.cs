using System.Globalization;

namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>The flange of a flanged miniature bearing.</summary>
/// <param name="Designation">With its closure where the flange depends on it: <c>F688ZZ</c>, <c>F608</c>.</param>
/// <param name="Form">"open", "shielded" or "both".</param>
/// <param name="Outside">Flange outside diameter in millimetres.</param>
/// <param name="Width">Flange width in millimetres.</param>
public sealed record BearingFlange(string Designation, string Form, decimal Outside, decimal Width)
{
    /// <summary>The flanged number without its closure: <c>F688</c>.</summary>
    public string Basic => BearingTable.WithoutClosure(Designation);

    internal static BearingFlange From(IReadOnlyList<string> cells) =>
        new(cells[0], cells[1], decimal.Parse(cells[2], CultureInfo.InvariantCulture), decimal.Parse(cells[3], CultureInfo.InvariantCulture));
}

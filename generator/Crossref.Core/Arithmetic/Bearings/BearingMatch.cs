namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>A bearing of the table beside what was measured.</summary>
/// <param name="Row">The bearing.</param>
/// <param name="Bore">Its bore against the measured one.</param>
/// <param name="Outside">Its outside diameter against the measured one.</param>
/// <param name="Width">Its width against the measured one.</param>
public sealed record BearingMatch(BearingRow Row, SizeCheck Bore, SizeCheck Outside, SizeCheck Width)
{
    /// <summary>Whether nothing that was measured rules it out.</summary>
    public bool Possible => !Bore.Differs && !Outside.Differs && !Width.Differs;

    /// <summary>How far off it is altogether, in millimetres.</summary>
    public double Distance => Math.Abs(Bore.Off) + Math.Abs(Outside.Off) + Math.Abs(Width.Off);

    /// <summary>
    /// Every bearing of the table beside what was measured, the closest first: the limits of ISO 492 class Normal and the
    /// measuring uncertainty decide. What was not measured is null, and stays unknown.
    /// </summary>
    public static IReadOnlyList<BearingMatch> All(Interval? bore, Interval? outside, Interval? width) =>
        [.. BearingTable.Rows.Select(r => Against(r, bore, outside, width)).OrderBy(m => m.Distance)];

    private static BearingMatch Against(BearingRow row, Interval? bore, Interval? outside, Interval? width)
    {
        var limits = BearingLimits.Of((double)row.Bore, (double)row.Outside, (double)row.Width);
        return new BearingMatch(
            row, BearingTolerance.Check(bore, limits.Bore), BearingTolerance.Check(outside, limits.Outside), BearingTolerance.Check(width, limits.Width));
    }
}

namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>
/// What ISO 492 allows a radial bearing of class Normal (P0, ABEC 1) in bore, outside diameter and width. Read from three
/// makers' handbooks that agree; sources stand at the top of <c>bearing-limits.csv</c>. The bore and the outside diameter
/// are mean ones in a single plane.
/// </summary>
public static class BearingTolerance
{
    /// <summary>Deviations in micrometres by nominal size: delta_dmp, delta_Bs (both by the bore) and delta_Dmp.</summary>
    public static IReadOnlyList<ToleranceBand> Bands { get; } =
        [.. EmbeddedTable.Rows("bearing-limits.csv").Select(c => ToleranceBand.From(c[0], c[1], c[2], c[4], c[3]))];

    /// <summary>Deviation of the mean bore in millimetres, for nominal bores over 0.6 to 120 mm; null outside.</summary>
    public static Interval? Bore(double bore) => Deviation(BoreBand(bore));

    /// <summary>Deviation of the mean outside diameter in millimetres, for nominal diameters over 2.5 to 150 mm; null outside.</summary>
    public static Interval? Outside(double outside) => Deviation(OutsideBand(outside));

    /// <summary>Deviation of a ring's width in millimetres, by the nominal bore and not the width, for bores over 0.6 to 120 mm; null outside.</summary>
    public static Interval? Width(double bore) => Deviation(WidthBand(bore));

    internal static ToleranceBand? BoreBand(double bore) => ToleranceBand.For(Bands, "delta_dmp", bore);

    internal static ToleranceBand? OutsideBand(double outside) => ToleranceBand.For(Bands, "delta_Dmp", outside);

    internal static ToleranceBand? WidthBand(double bore) => ToleranceBand.For(Bands, "delta_Bs", bore);

    /// <summary>Whether what was measured may be a size within the limits.</summary>
    public static SizeCheck Check(Interval? measured, Interval? limits)
    {
        if (measured is not { } size || limits is not { } allowed) return SizeCheck.Unknown;
        if (size.Low > allowed.High + Rounding) return new SizeCheck(size.Low - allowed.High, true);
        return size.High < allowed.Low - Rounding ? new SizeCheck(size.High - allowed.Low, true) : new SizeCheck(0, true);
    }

    private static Interval? Deviation(ToleranceBand? band) => band is null ? null : new Interval(band.Micrometres.Low / 1000, band.Micrometres.High / 1000);

    private const double Rounding = 1e-9;
}

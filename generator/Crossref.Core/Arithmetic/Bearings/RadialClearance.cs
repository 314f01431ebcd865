namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>
/// Radial internal clearance of deep groove ball bearings with cylindrical bore before fitting, ISO 5753-1. Read from
/// three makers' handbooks that agree; sources stand at the top of <c>bearing-clearances.csv</c>.
/// </summary>
public static class RadialClearance
{
    /// <summary>Clearances in micrometres by group and nominal bore.</summary>
    public static IReadOnlyList<ToleranceBand> Bands { get; } =
        [.. EmbeddedTable.Rows("bearing-clearances.csv").Select(c => ToleranceBand.From(c[2], c[0], c[1], c[3], c[4]))];

    /// <summary>The band for a bore over 2.5 to 120 mm and a group of C2 to C5 or CN; null where the table has none.</summary>
    public static ToleranceBand? Of(double bore, string group) => ToleranceBand.For(Bands, group, bore);
}

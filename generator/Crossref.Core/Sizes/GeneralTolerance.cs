namespace Crossref.Core.Sizes;

/// <summary>
/// Permissible deviations of lengths without a tolerance of their own: ISO 2768-1:1989, table 1, class m (medium), from
/// memory; millimetres.
/// </summary>
public static class GeneralTolerance
{
    /// <summary>The largest length of each band and the deviation to either side in it, the smallest first.</summary>
    public static IReadOnlyList<(double UpTo, double Deviation)> Bands { get; } =
        [(6, 0.1), (30, 0.2), (120, 0.3), (400, 0.5), (1000, 0.8), (2000, 1.2), (4000, 2)];

    /// <summary>The deviation to either side that is allowed at a length, both in millimetres; beyond 4 m that of the last band.</summary>
    public static double Medium(double length)
    {
        foreach (var (upTo, deviation) in Bands)
            if (Math.Abs(length) <= upTo + 1e-9) return deviation;
        return Bands[^1].Deviation;
    }
}

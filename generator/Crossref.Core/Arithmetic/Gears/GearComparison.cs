namespace Crossref.Core.Arithmetic.Gears;

/// <summary>
/// Holds two external gears against each other, size by size. The working tolerances are common practice without a source,
/// each with its reason below. Everything here comes out the same when the two gears change places: a narrower gear
/// carries less and a wider one may find no room, so a different face counts as differing both ways.
/// </summary>
public static class GearComparison
{
    // Below half of what lies between the usual angles, 14.5°, 17.5° and 20°.
    private const double AngleTolerance = 0.5;

    // Over a face of 10 mm this is 0.02 mm: more, and the teeth carry on one end only.
    private const double HelixTolerance = 0.1;

    // Moulded and sawn faces vary by as much from piece to piece.
    private const double FaceTolerance = 0.5;

    // The same nominal bore; whether it runs or is pressed on is a question of its fit.
    private const double BoreTolerance = 0.05;

    /// <summary>What two gears must agree in to mesh on parallel shafts.</summary>
    public static IReadOnlyList<SizeComparison> Mesh(GearSizes one, GearSizes other) =>
    [
        .. Teeth(one, other),
        new("hand", Hands(one.Hand, other.Hand, opposite: true), "opposite hands mesh on parallel shafts, straight with straight"),
    ];

    /// <summary>What two gears must agree in for one to take the other's place. Hub, keyway or flat and profile shift are not among it.</summary>
    public static IReadOnlyList<SizeComparison> Replace(GearSizes one, GearSizes other) =>
    [
        .. Teeth(one, other),
        new("hand", Hands(one.Hand, other.Hand, opposite: false), "the same hand"),
        new("teeth", Compare(one.Teeth, other.Teeth, 0), "the same number"),
        new("face", Compare(one.Face, other.Face, FaceTolerance), "within 0.5 mm: a narrower face carries less, a wider one needs the room"),
        new("bore", Compare(one.Bore, other.Bore, BoreTolerance), "within 0.05 mm; the fit on the shaft is another question"),
    ];

    /// <summary>All must agree; one that differs decides; else it is unknown.</summary>
    public static Agreement Overall(IReadOnlyList<SizeComparison> sizes) =>
        sizes.Any(s => s.Agreement == Agreement.Differs) ? Agreement.Differs
        : sizes.All(s => s.Agreement == Agreement.Agrees) ? Agreement.Agrees
        : Agreement.Unknown;

    /// <summary>
    /// Agrees when even the values farthest apart are within the tolerance, differs when even the nearest are not. What is
    /// not known, or known too loosely, is unknown.
    /// </summary>
    public static Agreement Compare(Interval? one, Interval? other, double tolerance)
    {
        if (one is not { } a || other is not { } b) return Agreement.Unknown;
        if (Math.Max(a.Low - b.High, b.Low - a.High) > tolerance + 1e-9) return Agreement.Differs;
        return Math.Max(a.High - b.Low, b.High - a.Low) <= tolerance + 1e-9 ? Agreement.Agrees : Agreement.Unknown;
    }

    private static SizeComparison[] Teeth(GearSizes one, GearSizes other) =>
    [
        new("module", Compare(one.Module, other.Module, ModuleTolerance(one.Module, other.Module)), "within 0.3%: module 0.8 and 32 DP are 0.8% apart"),
        new("pressure angle", Compare(one.PressureAngle, other.PressureAngle, AngleTolerance), "within 0.5°"),
        new("helix angle", Compare(one.Helix, other.Helix, HelixTolerance), "within 0.1°"),
    ];

    private static double ModuleTolerance(Interval? one, Interval? other) =>
        ToothSizes.Margin * Math.Min(one?.Middle ?? 0, other?.Middle ?? 0);

    private static Agreement Hands(Hand? one, Hand? other, bool opposite)
    {
        if (one is not { } a || other is not { } b) return Agreement.Unknown;
        return (opposite && a != Hand.None && b != Hand.None ? a != b : a == b) ? Agreement.Agrees : Agreement.Differs;
    }
}

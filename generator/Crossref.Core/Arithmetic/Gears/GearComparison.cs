using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Core.Arithmetic.Gears;

/// <summary>
/// Holds two external gears against each other, size by size, with the working tolerances that parts on record are compared
/// by. Everything comes out the same when the two gears change places: a narrower gear carries less and a wider one may find
/// no room, so a different face counts as differing both ways.
/// </summary>
public static class GearComparison
{
    private static readonly PartKind Gear = PartKind.Find("gear")!;

    /// <summary>What two gears must agree in to mesh on parallel shafts.</summary>
    public static IReadOnlyList<ComparedSize> Mesh(GearSizes one, GearSizes other) =>
    [
        .. Teeth(one, other),
        Hands(one.Hand, other.Hand, opposite: true, "opposite hands mesh on parallel shafts, straight teeth with straight ones"),
    ];

    /// <summary>What two gears must agree in for one to take the other's place. Hub, keyway or flat and profile shift are not among it.</summary>
    public static IReadOnlyList<ComparedSize> Replace(GearSizes one, GearSizes other) =>
    [
        .. Teeth(one, other),
        Hands(one.Hand, other.Hand, opposite: false, "must be the same"),
        Size("teeth", "teeth", one.Teeth, other.Teeth, ""),
        Size("face", "face", one.Face, other.Face, "mm"),
        Size("bore", "bore", one.Bore, other.Bore, "mm"),
    ];

    /// <summary>All must agree; one that differs decides; else it is unknown.</summary>
    public static Agreement Overall(IReadOnlyList<ComparedSize> sizes) =>
        sizes.Any(s => s.Agreement == Agreement.Differs) ? Agreement.Differs
        : sizes.All(s => s.Agreement == Agreement.Agrees) ? Agreement.Agrees
        : Agreement.Unknown;

    /// <summary>
    /// Agrees when even the values farthest apart are within the tolerance, differs when even the nearest are not. What is
    /// not known, or known too loosely, is unknown.
    /// </summary>
    public static Agreement Compare(Interval one, Interval other, double tolerance) =>
        Math.Max(one.Low - other.High, other.Low - one.High) > tolerance + 1e-9 ? Agreement.Differs
        : Math.Max(one.High - other.Low, other.High - one.Low) <= tolerance + 1e-9 ? Agreement.Agrees
        : Agreement.Unknown;

    private static ComparedSize[] Teeth(GearSizes one, GearSizes other) =>
    [
        Size("module", "module", one.Module, other.Module, "mm"),
        Size("pressure angle", "pressure-angle", one.PressureAngle, other.PressureAngle, "°"),
        Size("helix angle", "helix", one.Helix, other.Helix, "°"),
    ];

    private static ComparedSize Size(string name, string attribute, Interval? one, Interval? other, string unit)
    {
        if (one is not { } a || other is not { } b) return new ComparedSize(name, Agreement.Unknown, "both must be known");
        var tolerance = WorkingTolerance.Of(Gear, attribute, Math.Max(a.Middle, b.Middle));
        var rule = tolerance.Width == 0 ? tolerance.Reason : $"may differ by {Figure.Of(tolerance.Width, 4, unit)} ({tolerance.Reason})";
        return new ComparedSize(name, Compare(a, b, tolerance.Width), rule);
    }

    private static ComparedSize Hands(Hand? one, Hand? other, bool opposite, string rule)
    {
        if (one is not { } a || other is not { } b) return new ComparedSize("hand", Agreement.Unknown, "both must be known");
        var agree = opposite && a != Hand.None && b != Hand.None ? a != b : a == b;
        return new ComparedSize("hand", agree ? Agreement.Agrees : Agreement.Differs, rule);
    }
}

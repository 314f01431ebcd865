namespace Crossref.Core.Arithmetic.Gears;

/// <summary>Two external gears on parallel shafts: millimetres and degrees (ISO 21771).</summary>
public static class CentreDistance
{
    /// <summary>Without profile shift: a_d = m_t (z1 + z2) / 2.</summary>
    public static Interval Reference(int bothTeeth, Interval module, Interval helix) => GearAngles.TransverseModule(module, helix) * bothTeeth / 2;

    /// <summary>a = a_d · cos α_t / cos α_wt.</summary>
    public static Interval Working(Interval reference, Interval transverse, Interval workingAngle) =>
        reference * Degrees.Cos(transverse) / Degrees.Cos(workingAngle);

    /// <summary>Working pressure angle at a centre distance: cos α_wt = a_d · cos α_t / a; null when the base circles may be too large for it.</summary>
    public static Interval? WorkingAngle(Interval reference, Interval transverse, Interval distance)
    {
        var cosine = reference * Degrees.Cos(transverse) / distance;
        return cosine.High > 1 ? null : Degrees.ArcCos(cosine);
    }

    /// <summary>Working pressure angle from profile shift: inv α_wt = inv α_t + 2 tan α_n (x1 + x2) / (z1 + z2).</summary>
    public static double WorkingAngle(double pressureAngle, double transverse, double bothShifts, int bothTeeth) =>
        Involute.Inverse(Involute.Of(transverse) + 2 * Math.Tan(Degrees.Radians(pressureAngle)) * bothShifts / bothTeeth);

    /// <summary>x1 + x2 = (z1 + z2) (inv α_wt − inv α_t) / (2 tan α_n) (ISO 21771:2007, Eq. 62, as quoted by a worked example).</summary>
    public static Interval BothShifts(Interval pressureAngle, Interval transverse, Interval workingAngle, int bothTeeth) =>
        (Involute.Of(workingAngle) - Involute.Of(transverse)) * bothTeeth / (2 * Degrees.Tan(pressureAngle));

    /// <summary>Working pitch diameter: d_w1 = 2 a z1 / (z1 + z2).</summary>
    public static Interval WorkingDiameter(Interval distance, int teeth, int bothTeeth) => 2 * distance * teeth / bothTeeth;

    /// <summary>The module that a centre distance points to if there is no profile shift: m = 2 a cos β / (z1 + z2).</summary>
    public static Interval ModuleByDistance(Interval distance, int bothTeeth, Interval helix) => 2 * distance * Degrees.Cos(helix) / bothTeeth;
}

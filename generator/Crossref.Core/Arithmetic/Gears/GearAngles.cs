namespace Crossref.Core.Arithmetic.Gears;

/// <summary>Between the normal section, in which the tool cuts, and the transverse one, in which the gear turns (ISO 21771).</summary>
public static class GearAngles
{
    /// <summary>m_t = m_n / cos β, in millimetres.</summary>
    public static Interval TransverseModule(Interval module, Interval helix) => module / Degrees.Cos(helix);

    /// <summary>tan α_t = tan α_n / cos β; degrees.</summary>
    public static Interval TransversePressureAngle(Interval pressureAngle, Interval helix) =>
        Degrees.ArcTan(Degrees.Tan(pressureAngle) / Degrees.Cos(helix));

    /// <summary>tan α_n = tan α_t · cos β; degrees.</summary>
    public static Interval NormalPressureAngle(Interval transverse, Interval helix) =>
        Degrees.ArcTan(Degrees.Tan(transverse) * Degrees.Cos(helix));

    /// <summary>Helix angle on the base cylinder: sin β_b = sin β · cos α_n; degrees.</summary>
    public static Interval BaseHelix(Interval pressureAngle, Interval helix) =>
        Degrees.ArcSin(Degrees.Sin(helix) * Degrees.Cos(pressureAngle));
}

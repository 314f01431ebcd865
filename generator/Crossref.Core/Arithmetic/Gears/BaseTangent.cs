namespace Crossref.Core.Arithmetic.Gears;

/// <summary>
/// The span over several teeth, measured with flat jaws that touch two flanks: base tangent length W_k (ISO 21771).
/// Millimetres and degrees; modules, pressure angles and profile shifts of the normal section.
/// </summary>
public static class BaseTangent
{
    /// <summary>W_k = m cos α_n (π (k − ½) + z inv α_t) + 2 x m sin α_n.</summary>
    public static Interval Length(int teeth, int spanned, Interval module, Interval pressureAngle, Interval helix, double shift = 0) =>
        module * (Unshifted(teeth, spanned, pressureAngle, helix) + 2 * shift * Degrees.Sin(pressureAngle));

    /// <summary>The same from the sizes of the transverse section: m_t, α_t, x_t.</summary>
    public static Interval TransverseLength(int teeth, int spanned, Interval module, Interval pressureAngle, double helix, double shift)
    {
        var cosine = Math.Cos(Degrees.Radians(helix));
        return Length(teeth, spanned, module * cosine, GearAngles.NormalPressureAngle(pressureAngle, helix), helix, shift / cosine);
    }

    /// <summary>
    /// How many teeth to span so that the jaws touch about half way up the teeth, before it is rounded to a whole number.
    /// The formula is the trade's (no standard at hand); for an unshifted spur gear it is z α / 180° + ½.
    /// </summary>
    public static double TeethToSpan(int teeth, double pressureAngle, double helix, double shift = 0)
    {
        var (cosine, tangent, perTooth) = (Math.Cos(Degrees.Radians(helix)), Math.Tan(Degrees.Radians(pressureAngle)), shift / teeth);
        var both = cosine * cosine + tangent * tangent;
        var transverse = GearAngles.TransversePressureAngle(pressureAngle, helix).Middle;
        var rolled = (1 + (1 - cosine * cosine) / both) * Math.Sqrt(Math.Max(0, both * Math.Pow(1 / cosine + 2 * perTooth, 2) - 1));
        return teeth * (rolled - Involute.Of(transverse) - 2 * perTooth * tangent) / Math.PI + 0.5;
    }

    /// <summary>Base pitch: W_(k+1) − W_k = p_bn = π m cos α_n, whatever the profile shift.</summary>
    public static Interval Pitch(Interval module, Interval pressureAngle) => Math.PI * module * Degrees.Cos(pressureAngle);

    /// <summary>The module of a base pitch.</summary>
    public static Interval ModuleByPitch(Interval pitch, Interval pressureAngle) => pitch / (Math.PI * Degrees.Cos(pressureAngle));

    /// <summary>The profile shift x that a span shows; teeth thinned for backlash read as less.</summary>
    public static Interval Shift(Interval span, int teeth, int spanned, Interval module, Interval pressureAngle, Interval helix) =>
        (span / module - Unshifted(teeth, spanned, pressureAngle, helix)) / (2 * Degrees.Sin(pressureAngle));

    /// <summary>A helical gear must be wider than W_k · sin β_b, or one jaw slips off its end.</summary>
    public static Interval NarrowestFace(Interval span, Interval pressureAngle, Interval helix) =>
        span * Degrees.Sin(GearAngles.BaseHelix(pressureAngle, helix));

    private static Interval Unshifted(int teeth, int spanned, Interval pressureAngle, Interval helix) =>
        Degrees.Cos(pressureAngle) * (Math.PI * (spanned - 0.5) + teeth * Involute.Of(GearAngles.TransversePressureAngle(pressureAngle, helix)));
}

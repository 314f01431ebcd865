namespace Crossref.Core.Arithmetic.Gears;

/// <summary>How thick a tooth is on the reference circle, and what a gear tooth calliper reads there. Millimetres and degrees.</summary>
public static class ToothThickness
{
    /// <summary>Along the arc, in the normal section: s_n = m (π / 2 + 2 x tan α_n) (ISO 21771).</summary>
    public static double OnReference(double module, double pressureAngle, double shift = 0) =>
        module * (Math.PI / 2 + 2 * shift * Math.Tan(Degrees.Radians(pressureAngle)));

    /// <summary>Teeth of the spur gear that a helical one looks like along its teeth: z / cos³ β.</summary>
    public static double VirtualTeeth(int teeth, double helix) => teeth / Math.Pow(Math.Cos(Degrees.Radians(helix)), 3);

    /// <summary>Half the angle that a tooth fills, in degrees: 90 / z + 360 x tan α / (π z).</summary>
    /// <param name="teeth">Teeth, virtual ones for a helical gear.</param>
    /// <param name="pressureAngle">Pressure angle of the section in which <paramref name="shift"/> is given.</param>
    /// <param name="shift">Profile shift in modules of that section.</param>
    public static double HalfAngle(double teeth, double pressureAngle, double shift = 0) =>
        90 / teeth + 360 * shift * Math.Tan(Degrees.Radians(pressureAngle)) / (Math.PI * teeth);

    /// <summary>Straight across the tooth: z m sin θ.</summary>
    public static double Chord(double teeth, double module, double halfAngle) => teeth * module * Math.Sin(Degrees.Radians(halfAngle));

    /// <summary>From the tip down to that chord: addendum + z m (1 − cos θ) / 2.</summary>
    public static double ChordalHeight(double teeth, double module, double halfAngle, double addendum) =>
        addendum + teeth * module / 2 * (1 - Math.Cos(Degrees.Radians(halfAngle)));
}

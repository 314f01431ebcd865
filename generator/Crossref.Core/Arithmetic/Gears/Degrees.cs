namespace Crossref.Core.Arithmetic.Gears;

/// <summary>Sine, cosine and tangent of angles from 0° to below 90°, as gear formulas want them: angles stay in degrees.</summary>
internal static class Degrees
{
    internal static Interval Sin(Interval angle) => angle.Rising(a => Math.Sin(Radians(a)));

    internal static Interval Cos(Interval angle) => angle.Falling(a => Math.Cos(Radians(a)));

    internal static Interval Tan(Interval angle) => angle.Rising(a => Math.Tan(Radians(a)));

    internal static Interval ArcSin(Interval ratio) => ratio.Rising(r => Math.Asin(r) * 180 / Math.PI);

    internal static Interval ArcCos(Interval ratio) => ratio.Falling(r => Math.Acos(r) * 180 / Math.PI);

    internal static Interval ArcTan(Interval ratio) => ratio.Rising(r => Math.Atan(r) * 180 / Math.PI);

    internal static double Radians(double degrees) => degrees * Math.PI / 180;
}

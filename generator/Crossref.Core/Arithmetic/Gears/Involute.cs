namespace Crossref.Core.Arithmetic.Gears;

/// <summary>The involute function inv α = tan α − α (ISO 21771, as commonly given).</summary>
public static class Involute
{
    /// <summary>inv α.</summary>
    /// <param name="degrees">From 0° to below 90°.</param>
    public static double Of(double degrees) => Math.Tan(Degrees.Radians(degrees)) - Degrees.Radians(degrees);

    /// <summary>inv α of a doubtful angle.</summary>
    public static Interval Of(Interval degrees) => degrees.Rising(Of);

    /// <summary>The angle in degrees whose involute this is, by Newton's method from the first term of its series, α³/3.</summary>
    /// <param name="involute">0 or more; up to 1 (an angle of 64°) it is exact to the last digits.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is below 0 or above 1.</exception>
    public static double Inverse(double involute)
    {
        if (involute is < 0 or > 1 or double.NaN) throw new ArgumentOutOfRangeException(nameof(involute), "An involute lies between 0 and 1.");
        if (involute == 0) return 0;
        var angle = Math.Cbrt(3 * involute);
        // From this start the angle falls towards the solution: the function is convex.
        for (var i = 0; i < 60; i++) angle -= (Math.Tan(angle) - angle - involute) / Math.Pow(Math.Tan(angle), 2);
        return angle * 180 / Math.PI;
    }
}

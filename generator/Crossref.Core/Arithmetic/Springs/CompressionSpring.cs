namespace Crossref.Core.Arithmetic.Springs;

/// <summary>A cylindrical compression spring of round wire with even pitch. EN 13906-1 gives the same law (its text was not held).</summary>
public static class CompressionSpring
{
    /// <summary>Rate in newtons per millimetre: G × d⁴ / (8 × D³ × n).</summary>
    /// <param name="shear">Shear modulus in gigapascals.</param>
    /// <param name="wire">Wire diameter d in millimetres.</param>
    /// <param name="mean">Mean coil diameter D in millimetres.</param>
    /// <param name="active">Coils that work.</param>
    /// <exception cref="DivideByZeroException">The coil or the number of coils may be zero.</exception>
    public static Interval Rate(Interval shear, Interval wire, Interval mean, Interval active) =>
        shear * 1000 * wire * wire * wire * wire / (8 * mean * mean * mean * active);

    /// <summary>The length at which its coils touch, in millimetres.</summary>
    public static Interval Touching(Interval wire, Interval coils, SpringEnds ends) => (coils + ends.Extra) * wire;
}

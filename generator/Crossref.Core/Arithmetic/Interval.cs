using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic;

/// <summary>
/// All values that a figure may have, from the lowest to the highest. Sums, differences, products and quotients hold
/// every value that two of them may give, so that a doubtful input never becomes a certain answer.
/// </summary>
/// <param name="Low">The lowest value.</param>
/// <param name="High">The highest value; never below <paramref name="Low"/>.</param>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>A figure without doubt.</summary>
    public static Interval Exactly(double value) => new(value, value);

    /// <summary>A measured quantity: its value, its uncertainty to both sides.</summary>
    public static Interval Of(Quantity quantity) =>
        new((double)quantity.Value - (double)quantity.Uncertainty, (double)quantity.Value + (double)quantity.Uncertainty);

    /// <summary>A value and its uncertainty to both sides.</summary>
    public static Interval Around(double value, double uncertainty) => new(value - uncertainty, value + uncertainty);

    /// <summary>The value in the middle.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>Half of the distance between the ends.</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>Whether a value lies inside, the ends counted.</summary>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>Whether every value of another one lies inside.</summary>
    public bool Holds(Interval other) => other.Low >= Low && other.High <= High;

    /// <summary>Whether the two have a value in common.</summary>
    public bool Meets(Interval other) => Low <= other.High && other.Low <= High;

    /// <summary>Whatever a rising function makes of it.</summary>
    public Interval Rising(Func<double, double> function) => new(function(Low), function(High));

    /// <summary>Whatever a falling function makes of it.</summary>
    public Interval Falling(Func<double, double> function) => new(function(High), function(Low));

    /// <summary>Sum.</summary>
    public static Interval operator +(Interval one, Interval other) => new(one.Low + other.Low, one.High + other.High);

    /// <summary>Difference.</summary>
    public static Interval operator -(Interval one, Interval other) => new(one.Low - other.High, one.High - other.Low);

    /// <summary>Product.</summary>
    public static Interval operator *(Interval one, Interval other) =>
        Hull(one.Low * other.Low, one.Low * other.High, one.High * other.Low, one.High * other.High);

    /// <summary>Quotient.</summary>
    /// <exception cref="DivideByZeroException">The divisor may be zero.</exception>
    public static Interval operator /(Interval one, Interval other) => other.Holds(0)
        ? throw new DivideByZeroException("The divisor may be zero.")
        : Hull(one.Low / other.Low, one.Low / other.High, one.High / other.Low, one.High / other.High);

    /// <summary>A plain number is an interval without width.</summary>
    public static implicit operator Interval(double value) => Exactly(value);

    private static Interval Hull(double a, double b, double c, double d) =>
        new(Math.Min(Math.Min(a, b), Math.Min(c, d)), Math.Max(Math.Max(a, b), Math.Max(c, d)));
}

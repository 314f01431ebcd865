namespace Crossref.Core.Arithmetic.Lamps;

/// <summary>
/// How a filament lamp behaves off its rated volts: each figure goes with (volts ÷ rated volts) raised to an exponent. No
/// standard fixes the exponents; they are handbook practice (an encyclopaedia's page on lamp rerating that cites Fink and
/// Beaty, Standard Handbook for Electrical Engineers, 11th edition, 1978, page 22-8), so each is a range.
/// </summary>
public static class Rerating
{
    /// <summary>Power: 1.6 by the handbook, 1.55 by current × volts; 1.5 is trade practice without a source.</summary>
    public static Interval Power { get; } = new(1.5, 1.6);

    /// <summary>Current.</summary>
    public static Interval Current { get; } = 0.55;

    /// <summary>Light: 3.4 to 3.5 by the handbook, about 3 by a page on halogen lamps.</summary>
    public static Interval Flux { get; } = new(3, 3.5);

    /// <summary>Life, by the handbook.</summary>
    public static Interval Life { get; } = new(-16, -12);

    /// <summary>Life, as one lamp seller's figures have it (11 V and 13 V on a 12 V lamp); the handbook disagrees.</summary>
    public static Interval MildLife { get; } = new(-10, -6);

    /// <summary>How far from the rated volts the exponents hold: a tenth to either side. From memory; the sources give no limit.</summary>
    public const double Reach = 0.1;

    /// <summary>Whether the exponents hold at every one of these ratios of volts to rated volts.</summary>
    public static bool Holds(Interval ratio) => ratio.Low >= 1 - Reach - 1e-9 && ratio.High <= 1 + Reach + 1e-9;

    /// <summary>How many times a figure becomes, for every ratio of volts (above zero) and every exponent.</summary>
    public static Interval Times(Interval ratio, Interval exponent)
    {
        var (a, b, c, d) = (Math.Pow(ratio.Low, exponent.Low), Math.Pow(ratio.Low, exponent.High), Math.Pow(ratio.High, exponent.Low), Math.Pow(ratio.High, exponent.High));
        return new(Math.Min(Math.Min(a, b), Math.Min(c, d)), Math.Max(Math.Max(a, b), Math.Max(c, d)));
    }

    /// <summary>Power if the resistance stayed as it is at rated volts: too low below them, where the filament is cooler, and too high above.</summary>
    public static Interval Ohmic(Interval ratio) => ratio * ratio;
}

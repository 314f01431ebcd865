namespace Crossref.Core.Arithmetic.Rolling;

/// <summary>Marks that come again: how far apart, and how thick the roller is that leaves them. Lengths in millimetres.</summary>
public static class Repeat
{
    /// <summary>How far a found size may be off, in percent to either side, because rubber squashes and slips. Trade practice, no source.</summary>
    public const double Tolerance = 3;

    /// <summary>The distance of one repeat.</summary>
    /// <param name="measured">From the first mark to the last, on the sheets laid end to end.</param>
    /// <param name="repeats">How many repeats that is, 1 or more.</param>
    /// <param name="gap">From one sheet's end to the next one's start, as they run.</param>
    /// <param name="gaps">How many such gaps lie between the two marks.</param>
    public static Interval One(Interval measured, int repeats, Interval gap, int gaps) => (measured + gap * gaps) / repeats;

    /// <summary>Once around a part whose skin outruns the paper, such as a developer sleeve.</summary>
    /// <param name="repeat">The distance on the paper.</param>
    /// <param name="ratio">Speed of its skin ÷ speed of the paper; 1 for what rolls with the paper.</param>
    public static Interval Around(Interval repeat, Interval ratio) => repeat * ratio;

    /// <summary>Once around a roller of that diameter.</summary>
    public static Interval Around(Interval diameter) => diameter * Math.PI;

    /// <summary>The diameter of a roller that is so far around.</summary>
    public static Interval Diameter(Interval around) => around / Math.PI;

    /// <summary>Everything that counts as the same, so many percent to either side.</summary>
    public static Interval Within(Interval around, Interval percent) => new(around.Low * (1 - percent.High / 100), around.High * (1 + percent.High / 100));
}

namespace Crossref.Core.Arithmetic.Spares;

/// <summary>How many fail when failures come by chance at an even rate (Poisson's law; IEC 62550 uses it for spares, from memory).</summary>
public static class Poisson
{
    /// <summary>The largest mean and count for which these sums hold; e^-mean is far from vanishing there.</summary>
    public const int Most = 300;

    /// <summary>The covers in percent that may be wanted; what is surer needs better figures than a count of failures (common practice, no source).</summary>
    public static Interval Covers { get; } = new(50, 99.9);

    /// <summary>The probability, 0 to 1, that no more than so many fail: e^-m · Σ m^i / i!, i = 0 to <paramref name="count"/>.</summary>
    /// <param name="count">0 to <see cref="Most"/>.</param>
    /// <param name="mean">How many are expected to fail, 0 or more.</param>
    public static double AtMost(int count, double mean)
    {
        var term = Math.Exp(-mean);
        var sum = term;
        for (var i = 1; i <= count; i++)
        {
            term *= mean / i;
            sum += term;
        }
        return Math.Min(sum, 1);
    }

    /// <summary>The fewest spares that are enough with a probability.</summary>
    /// <param name="mean">How many are expected to fail until more can be had, 0 to <see cref="Most"/>.</param>
    /// <param name="level">The probability, below 1.</param>
    public static int Fewest(double mean, double level)
    {
        var count = 0;
        // What is equal but for the last binary digits is enough.
        while (AtMost(count, mean) < level - 1e-12) count++;
        return count;
    }

    /// <summary>The mean at which no more than so many fail with a probability; the more are expected, the less likely that is.</summary>
    /// <param name="count">0 to <see cref="Most"/>.</param>
    /// <param name="probability">Above 0 and below 1.</param>
    public static double MeanAt(int count, double probability)
    {
        var (low, high) = (0.0, count + (10 * Math.Sqrt(count + 1)) + 40);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            if (AtMost(count, middle) > probability) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}

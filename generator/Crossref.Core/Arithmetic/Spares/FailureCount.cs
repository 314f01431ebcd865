namespace Crossref.Core.Arithmetic.Spares;

/// <summary>What a count of failures says about how many were to be expected.</summary>
public static class FailureCount
{
    /// <summary>How sure the bounds are that leave out as much below as above.</summary>
    public const double Level = 0.95;

    /// <summary>
    /// The exact bounds on the mean (Garwood 1936; half of chi-square with 2k and 2k + 2 degrees of freedom; IEC 60605-4 names
    /// the method, from memory). Nothing lies below when none failed.
    /// </summary>
    /// <param name="failures">How many failed, 0 to <see cref="Poisson.Most"/>.</param>
    public static Interval Bounds(int failures)
    {
        const double outside = (1 - Level) / 2;
        return new(failures == 0 ? 0 : Poisson.MeanAt(failures - 1, 1 - outside), Poisson.MeanAt(failures, outside));
    }
}

using Crossref.Core.Arithmetic.Limits;

namespace Crossref.Core.Tests.Arithmetic.Limits;

/// <summary>
/// The formulas of ISO 286-1 behind its tables, written from the formulas alone (the grades' by the reference's header, the
/// deviations' from memory: they are a second opinion beside the printed values, never the only one).
/// </summary>
internal static class Laws
{
    internal static double Width(int grade, SizeBand band)
    {
        var mean = Mean(band);
        return new[] { 7, 10, 16, 25, 40, 64, 100 }[grade - 5] * (0.45 * Math.Cbrt(mean) + 0.001 * mean);
    }

    /// <summary>A shaft's fundamental deviation; null for m and p, which follow from the grades.</summary>
    internal static double? Deviation(string letter, SizeBand band) => letter switch
    {
        "d" => -16 * Math.Pow(Mean(band), 0.44),
        "e" => -11 * Math.Pow(Mean(band), 0.41),
        "f" => -5.5 * Math.Pow(Mean(band), 0.41),
        "g" => -2.5 * Math.Pow(Mean(band), 0.34),
        "h" => 0,
        "k" => 0.6 * Math.Cbrt(Mean(band)),
        "n" => 5 * Math.Pow(Mean(band), 0.34),
        _ => null,
    };

    /// <summary>What of a band contradicts the formulas. The band up to 3 mm was set by hand and is left out.</summary>
    internal static IEnumerable<string> Faults(SizeBand band)
    {
        if (band.Over == 0) yield break;
        for (var grade = 5; grade <= 11; grade++)
            if (Far(band.Widths[grade - 5], Width(grade, band), 0.04)) yield return $"IT{grade}";
        foreach (var (letter, value) in band.Deviations)
            if (Deviation(letter, band) is { } law && Far(value, law, 0.02)) yield return letter;
        if (band.Deviations["m"] != band.Widths[2] - band.Widths[1]) yield return "m is not IT7 less IT6";
        if (band.Deviations["p"] - band.Widths[2] is < 0 or > 5) yield return "p is not IT7 and 0 to 5";
    }

    // The first band begins at 1 mm for this purpose.
    private static double Mean(SizeBand band) => Math.Sqrt(Math.Max(band.Over, 1) * band.UpTo);

    private static bool Far(double value, double law, double share) => Math.Abs(value - law) > 0.5 + share * Math.Abs(law);
}

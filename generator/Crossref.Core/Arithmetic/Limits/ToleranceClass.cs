using System.Globalization;
using System.Text.RegularExpressions;

namespace Crossref.Core.Arithmetic.Limits;

/// <summary>A tolerance class of ISO 286-1, such as H7 for a hole or g6 for a shaft.</summary>
/// <param name="Letters">The fundamental deviation: capitals for holes.</param>
/// <param name="Grade">7 for IT7.</param>
public sealed partial record ToleranceClass(string Letters, int Grade)
{
    /// <summary>Whether it is a hole's.</summary>
    public bool IsHole => char.IsUpper(Letters[0]);

    /// <summary>Reads a class; null when the text is none.</summary>
    public static ToleranceClass? Read(string text) => Written().Match(text.Trim()) is { Success: true } match
        ? new ToleranceClass(match.Groups["letters"].Value, int.Parse(match.Groups["grade"].Value, CultureInfo.InvariantCulture))
        : null;

    /// <summary>
    /// The limit deviations for a nominal size in millimetres; null when the table does not carry them, with
    /// <paramref name="problem"/> in words. Holes follow from the shafts: D to H mirrored; K, M and N to grade 8 and P to
    /// grade 7 mirrored and raised by delta = IT(n) − IT(n−1) (nothing up to 3 mm); N from grade 9 is 0 above 3 mm; P from
    /// grade 8 mirrored. Grades 5 to 11, to 120 mm. The rules were checked against a maker's handbook; M is by the rule alone.
    /// </summary>
    public LimitDeviation? Deviations(double nominal, out string problem)
    {
        problem = "";
        if (SizeBand.Find(nominal) is not { } band) problem = "the table carries nominal sizes to 120 mm";
        else if (Grade is < StandardTolerance.Finest or > StandardTolerance.Coarsest) problem = "the table carries grades 5 to 11";
        else if (In(band) is { } deviation) return deviation;
        else problem = $"the table does not carry {Letters}{Grade}; it carries d e f g h js k m n p for shafts, D E F G H JS N P and, to grade 8, K M for holes";
        return null;
    }

    /// <summary>The limit deviations in one band, for a grade that the table carries; null for letters that it does not.</summary>
    internal LimitDeviation? In(SizeBand band)
    {
        var width = band.Widths[Grade - StandardTolerance.Finest];
        if (Letters is "js" or "JS") return new LimitDeviation(-width / 2, width / 2);
        if ((IsHole ? HoleDeviation(band) : ShaftDeviation(band)) is not { } deviation) return null;
        return (IsHole ? Letters[0] <= 'H' : Letters[0] > 'h') ? new LimitDeviation(deviation, deviation + width) : new LimitDeviation(deviation - width, deviation);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Letters}{Grade}");

    private double? ShaftDeviation(SizeBand band) =>
        Letters == "k" && Grade > 7 ? 0 : band.Deviations.TryGetValue(Letters, out var deviation) ? deviation : null;

    private double? HoleDeviation(SizeBand band)
    {
        if (Letters is "K" or "M" && Grade > 8 || !band.Deviations.TryGetValue(Letters.ToLowerInvariant(), out var shaft)) return null;
        if (Letters == "N" && Grade > 8 && band.Over > 0) return 0;
        var raised = Letters is "K" or "M" or "N" && Grade <= 8 || Letters == "P" && Grade <= 7;
        return (raised ? Delta(band) : 0) - shaft;
    }

    private double Delta(SizeBand band)
    {
        var step = Grade - StandardTolerance.Finest;
        return band.Over == 0 ? 0 : step == 0 ? band.Delta5 : band.Widths[step] - band.Widths[step - 1];
    }

    [GeneratedRegex("^(?<letters>[A-Z]{1,2}|[a-z]{1,2})(?<grade>[0-9]{1,2})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Written();
}

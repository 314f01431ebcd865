namespace Crossref.Core.Arithmetic.Limits;

/// <summary>The standard tolerance grades of ISO 286-1:2010. The table rules: its small bands were rounded by hand, so the formula behind it misses some.</summary>
public static class StandardTolerance
{
    /// <summary>The finest grade in the table.</summary>
    public const int Finest = 5;
    /// <summary>The coarsest grade in the table.</summary>
    public const int Coarsest = 11;

    /// <summary>The width of a grade in millimetres; null for a grade or a nominal size outside the table (IT5 to IT11, to 120 mm).</summary>
    /// <param name="grade">7 for IT7.</param>
    /// <param name="nominal">Nominal size in millimetres; a size on the end of a band belongs to the band below.</param>
    public static double? Width(int grade, double nominal) =>
        grade is < Finest or > Coarsest || SizeBand.Find(nominal) is not { } band ? null : band.Widths[grade - Finest] / 1000;
}

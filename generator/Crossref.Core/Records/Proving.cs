namespace Crossref.Core.Records;

/// <summary>
/// What a run must reach. The defaults are common practice in the trade, no source: a hundred heavy sheets show that
/// a part runs; half a normal life, or ten thousand sheets twice, show that it lasts.
/// </summary>
/// <param name="Sheets">Sheets (or cycles) each of two runs needs.</param>
/// <param name="Hours">Hours each of two runs needs when the counter counts hours.</param>
/// <param name="ShareOfLife">Share of the part's life one run needs, 0 to 1.</param>
/// <param name="Ran">Sheets (or cycles) below which a run says no more than <see cref="Basis.Seated"/>.</param>
public sealed record Proving(decimal Sheets, decimal Hours, decimal ShareOfLife, decimal Ran)
{
    /// <summary>10,000 sheets, 100 hours, half a life, 100 sheets.</summary>
    public static Proving Default { get; } = new(10_000, 100, 0.5m, 100);

    /// <summary>What each of two runs needs, in the unit of the run.</summary>
    public decimal Needed(CountUnit unit) => unit == CountUnit.Hours ? Hours : Sheets;

    /// <summary>
    /// What one run needs to count as a run at all. Hours have no setting of their own: they keep the proportion of
    /// <see cref="Hours"/> to <see cref="Sheets"/> (one hour with the defaults).
    /// </summary>
    public decimal NeededToCount(CountUnit unit) =>
        unit == CountUnit.Hours && Sheets > 0 ? Ran * Hours / Sheets : Ran;
}

namespace Crossref.Site.Pages.Views;

/// <summary>Everything that is disputed.</summary>
public sealed record DisputesView
{
    /// <summary>Parts that are disputed at a position.</summary>
    public required IReadOnlyList<DisputeView> Places { get; init; }
    /// <summary>Parts that are disputed in place of another.</summary>
    public required IReadOnlyList<StandInRow> Comparisons { get; init; }
}

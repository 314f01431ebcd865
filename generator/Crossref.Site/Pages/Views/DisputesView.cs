namespace Crossref.Site.Pages.Views;

/// <summary>Everything that is disputed, and what stands although somebody says no.</summary>
public sealed record DisputesView
{
    /// <summary>Parts that are disputed at a position.</summary>
    public required IReadOnlyList<DisputeView> Places { get; init; }
    /// <summary>Parts that are disputed at a position in one machine only, whose plate makes a condition certain.</summary>
    public required IReadOnlyList<DisputeView> Machines { get; init; }
    /// <summary>Parts that are disputed in place of another.</summary>
    public required IReadOnlyList<DisputeView> Comparisons { get; init; }
    /// <summary>What stands although a weaker statement says no.</summary>
    public required IReadOnlyList<DisputeView> Contradicted { get; init; }
}

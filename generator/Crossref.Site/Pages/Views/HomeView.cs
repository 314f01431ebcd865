namespace Crossref.Site.Pages.Views;

/// <summary>The first page.</summary>
public sealed record HomeView
{
    /// <summary>What the machine does wrong.</summary>
    public required IReadOnlyList<Link> Symptoms { get; init; }
    /// <summary>Machines in the shop.</summary>
    public required IReadOnlyList<MachineLine> Machines { get; init; }
    /// <summary>Machine families.</summary>
    public required IReadOnlyList<FamilyLine> Families { get; init; }
    /// <summary>The newest findings.</summary>
    public required IReadOnlyList<NewsLine> Findings { get; init; }
    /// <summary>What is disputed.</summary>
    public required IReadOnlyList<DisputeView> Disputes { get; init; }
    /// <summary>What nobody knows yet.</summary>
    public required IReadOnlyList<Link> Questions { get; init; }
    /// <summary>What idle units are owed.</summary>
    public required IReadOnlyList<OwedLine> Owed { get; init; }
    /// <summary>How much there is.</summary>
    public required IReadOnlyList<Pair> Counts { get; init; }
    /// <summary>Notes.</summary>
    public required IReadOnlyList<Link> Notes { get; init; }
}

namespace Crossref.Site.Pages.Views;

/// <summary>What to know before a cover comes off.</summary>
public sealed record BenchView
{
    /// <summary>How long to wait before opening, in a sentence.</summary>
    public required string Cool { get; init; }
    /// <summary>What can hurt somebody.</summary>
    public required IReadOnlyList<HazardView> Hazards { get; init; }
    /// <summary>Tools wanted on the bench.</summary>
    public required IReadOnlyList<string> Tools { get; init; }
    /// <summary>To the page of cautions.</summary>
    public required Link Cautions { get; init; }
    /// <summary>What suffers next, in order.</summary>
    public IReadOnlyList<Link> DamagesNext { get; init; } = [];
    /// <summary>What breaks easily on the way.</summary>
    public IReadOnlyList<Link> BreaksWhenOpened { get; init; } = [];
}

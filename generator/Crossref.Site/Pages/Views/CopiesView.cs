namespace Crossref.Site.Pages.Views;

/// <summary>What other copies brought.</summary>
public sealed record CopiesView
{
    /// <summary>Records of which copies differ, until somebody chooses.</summary>
    public required IReadOnlyList<ConflictView> Open { get; init; }
    /// <summary>When records came in last; null when none ever did.</summary>
    public string? Date { get; init; }
    /// <summary>From whom.</summary>
    public string? From { get; init; }
    /// <summary>What came in then.</summary>
    public required IReadOnlyList<CopiesGroup> Groups { get; init; }
}

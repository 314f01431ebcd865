namespace Crossref.Site.Pages.Views;

/// <summary>What has changed since a stick was last packed.</summary>
public sealed record ChangesView
{
    /// <summary>No stick was packed yet.</summary>
    internal static ChangesView Unknown { get; } = new() { Recorded = [], New = [], Confirmed = [], Contradicted = [], Withdrawn = [] };

    /// <summary>The day of that stick; null when none was packed.</summary>
    public string? Since { get; init; }
    /// <summary>Claims, repairs and questions that are new.</summary>
    public required IReadOnlyList<Phrase> Recorded { get; init; }
    /// <summary>Parts that stand where nothing was recorded.</summary>
    public required IReadOnlyList<ChangeRow> New { get; init; }
    /// <summary>Parts that stand more surely.</summary>
    public required IReadOnlyList<ChangeRow> Confirmed { get; init; }
    /// <summary>Parts that stand less surely, are disputed, or are ruled out.</summary>
    public required IReadOnlyList<ChangeRow> Contradicted { get; init; }
    /// <summary>Claims that were taken back.</summary>
    public required IReadOnlyList<Phrase> Withdrawn { get; init; }
}

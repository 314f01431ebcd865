namespace Crossref.Site.Pages.Views;

/// <summary>A position in the table of its assembly.</summary>
public sealed record PositionRow
{
    /// <summary>What fits there.</summary>
    public required Answer Answer { get; init; }
    /// <summary>What kind of part goes there.</summary>
    public required string Kind { get; init; }
    /// <summary>The job it does.</summary>
    public string? Role { get; init; }
    /// <summary>How many.</summary>
    public required int Quantity { get; init; }
    /// <summary>What the maker's list names.</summary>
    public required Phrase Listed { get; init; }
    /// <summary>Whether that is the answer, and nothing else.</summary>
    public required bool IsListedBest { get; init; }
    /// <summary>Which way round.</summary>
    public string? Orientation { get; init; }
    /// <summary>What suffers next.</summary>
    public required IReadOnlyList<Link> DamagesNext { get; init; }
    /// <summary>What breaks easily on the way.</summary>
    public required IReadOnlyList<Link> BreaksWhenOpened { get; init; }
}

namespace Crossref.Site.Pages.Views;

/// <summary>A repair and its story.</summary>
public sealed record RepairView
{
    /// <summary>When, on what, by whom.</summary>
    public required IReadOnlyList<Pair> Facts { get; init; }
    /// <summary>What was found.</summary>
    public required IReadOnlyList<Phrase> Found { get; init; }
    /// <summary>What came out, and where it went.</summary>
    public required IReadOnlyList<Phrase> Removed { get; init; }
    /// <summary>What went in, and where it came from.</summary>
    public required IReadOnlyList<Phrase> Fitted { get; init; }
    /// <summary>A whole unit that was changed.</summary>
    public Phrase? Swapped { get; init; }
    /// <summary>How it ended.</summary>
    public required string Outcome { get; init; }
    /// <summary>What the repair shows without anybody typing it twice.</summary>
    public required IReadOnlyList<EvidenceLine> Evidence { get; init; }
    /// <summary>Claims that rest on it.</summary>
    public required IReadOnlyList<ClaimLine> Claims { get; init; }
    /// <summary>Pictures.</summary>
    public required IReadOnlyList<PictureView> Pictures { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

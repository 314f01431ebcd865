namespace Crossref.Site.Pages.Views;

/// <summary>A claim in a list.</summary>
public sealed record ClaimLine
{
    /// <summary>The claim.</summary>
    public required Link Claim { get; init; }
    /// <summary>The id of its place on the page of claims.</summary>
    public required string Anchor { get; init; }
    /// <summary>The part that was tried.</summary>
    public required PartLine Part { get; init; }
    /// <summary>Where, or in place of what.</summary>
    public required Phrase About { get; init; }
    /// <summary>What it says.</summary>
    public required StatementView Statement { get; init; }
    /// <summary>Which way round it was fitted; null when the claim does not say.</summary>
    public string? Orientation { get; init; }
    /// <summary>Pictures.</summary>
    public required IReadOnlyList<PictureView> Pictures { get; init; }
    /// <summary>The claim it takes back.</summary>
    public Link? Withdraws { get; init; }
    /// <summary>Whether another claim says the opposite about the same thing.</summary>
    public bool Contradicted { get; init; }
}

namespace Crossref.Site.Pages.Views;

/// <summary>An order.</summary>
public sealed record OrderRow
{
    /// <summary>The id of its place on the page.</summary>
    public required string Anchor { get; init; }
    /// <summary>Its id.</summary>
    public required string Id { get; init; }
    /// <summary>What was ordered.</summary>
    public required PartLine Part { get; init; }
    /// <summary>How many.</summary>
    public required int Quantity { get; init; }
    /// <summary>How many are left of those that came.</summary>
    public required int Left { get; init; }
    /// <summary>When it was ordered.</summary>
    public required string Date { get; init; }
    /// <summary>When it should come.</summary>
    public required string Expected { get; init; }
    /// <summary>When it came; empty while it is on the way.</summary>
    public required string Received { get; init; }
    /// <summary>Whether it should have come already.</summary>
    public required bool Late { get; init; }
    /// <summary>What it is for.</summary>
    public Link? For { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

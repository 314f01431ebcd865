namespace Crossref.Site.Pages.Views;

/// <summary>One individual assembly: where it is, what it lacks, what it is owed.</summary>
public sealed record UnitView
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }
    /// <summary>The id of its place on the page of the shelf.</summary>
    public required string Anchor { get; init; }
    /// <summary>The unit.</summary>
    public required Link Unit { get; init; }
    /// <summary>Which assembly it is.</summary>
    public required Link Assembly { get; init; }
    /// <summary>Its family.</summary>
    public required Link Family { get; init; }
    /// <summary>Where it is, in words.</summary>
    public required string Where { get; init; }
    /// <summary>The machine it sits in; null when it is idle.</summary>
    public Link? Machine { get; init; }
    /// <summary>Where it stands.</summary>
    public string? Bin { get; init; }
    /// <summary>Whether it must run again.</summary>
    public required bool BackInService { get; init; }
    /// <summary>What must be put back before it runs.</summary>
    public required IReadOnlyList<OwedLine> Owed { get; init; }
    /// <summary>What it lacks, by its record.</summary>
    public required IReadOnlyList<Link> Missing { get; init; }
    /// <summary>Repairs that took from it, or worked on it.</summary>
    public required IReadOnlyList<Link> Repairs { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

namespace Crossref.Site.Pages.Views;

/// <summary>A source and what rests on it.</summary>
public sealed record SourceView
{
    /// <summary>What it is and where it is kept.</summary>
    public required IReadOnlyList<Pair> Facts { get; init; }
    /// <summary>What a statement in it counts for.</summary>
    public required string Weight { get; init; }
    /// <summary>How many claims name it and are not shown here.</summary>
    public required int MoreClaims { get; init; }
    /// <summary>To every claim.</summary>
    public required Link AllClaims { get; init; }
    /// <summary>Claims that name it, newest first, as many as one page bears.</summary>
    public required IReadOnlyList<ClaimLine> Claims { get; init; }
    /// <summary>Positions whose lists were read there.</summary>
    public required IReadOnlyList<SourceFamily> Lists { get; init; }
    /// <summary>Parts whose numbers were read there.</summary>
    public required IReadOnlyList<PartLine> Parts { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

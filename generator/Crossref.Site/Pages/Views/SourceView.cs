namespace Crossref.Site.Pages.Views;

/// <summary>A source and what rests on it.</summary>
public sealed record SourceView
{
    /// <summary>What it is and where it is kept.</summary>
    public required IReadOnlyList<Pair> Facts { get; init; }
    /// <summary>What a statement in it counts for.</summary>
    public required string Weight { get; init; }
    /// <summary>Claims that name it.</summary>
    public required IReadOnlyList<ClaimLine> Claims { get; init; }
    /// <summary>Positions whose lists were read there.</summary>
    public required IReadOnlyList<SourceFamily> Lists { get; init; }
    /// <summary>Parts whose numbers were read there.</summary>
    public required IReadOnlyList<PartLine> Parts { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

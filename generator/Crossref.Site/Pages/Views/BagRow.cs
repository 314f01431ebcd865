namespace Crossref.Site.Pages.Views;

/// <summary>A bag.</summary>
public sealed record BagRow
{
    /// <summary>The id of its place on the page.</summary>
    public required string Anchor { get; init; }
    /// <summary>Its id.</summary>
    public required string Id { get; init; }
    /// <summary>What is in it.</summary>
    public required PartLine Part { get; init; }
    /// <summary>How many are left.</summary>
    public required int Left { get; init; }
    /// <summary>How many were bagged.</summary>
    public required int Bagged { get; init; }
    /// <summary>How good they are.</summary>
    public required string Grade { get; init; }
    /// <summary>False for those kept for rebuilding or measuring only.</summary>
    public required bool Usable { get; init; }
    /// <summary>Where it hangs.</summary>
    public required string Bin { get; init; }
    /// <summary>The number moulded on it.</summary>
    public string? Number { get; init; }
    /// <summary>Where it came from.</summary>
    public required Phrase From { get; init; }
    /// <summary>When it was bagged.</summary>
    public required string Date { get; init; }
    /// <summary>Who tested it.</summary>
    public string? TestedBy { get; init; }
    /// <summary>What is wrong with it.</summary>
    public string? Defect { get; init; }
    /// <summary>Repairs that took from it or filled it.</summary>
    public required IReadOnlyList<Link> Repairs { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

namespace Crossref.Site.Pages.Views;

/// <summary>What is in the house, what is owed, what is on the way.</summary>
public sealed record ShelfView
{
    /// <summary>Bags with something in them, by bin.</summary>
    public required IReadOnlyList<BagRow> Bags { get; init; }
    /// <summary>Bags that are used up.</summary>
    public required IReadOnlyList<BagRow> Empty { get; init; }
    /// <summary>Idle units.</summary>
    public required IReadOnlyList<UnitView> Idle { get; init; }
    /// <summary>Units that sit in a machine.</summary>
    public required IReadOnlyList<UnitView> Running { get; init; }
    /// <summary>Orders on the way.</summary>
    public required IReadOnlyList<OrderRow> Coming { get; init; }
    /// <summary>What other shops had.</summary>
    public required IReadOnlyList<ElsewhereRow> Elsewhere { get; init; }
    /// <summary>Orders that came.</summary>
    public required IReadOnlyList<OrderRow> Came { get; init; }
}

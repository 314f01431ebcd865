namespace Crossref.Site.Pages.Views;

/// <summary>An assembly: what to know before opening it, and its positions.</summary>
public sealed record AssemblyView
{
    /// <summary>What to know before a cover comes off.</summary>
    public required BenchView Bench { get; init; }
    /// <summary>Its positions.</summary>
    public required IReadOnlyList<PositionRow> Positions { get; init; }
    /// <summary>What goes after what, when something fails.</summary>
    public required IReadOnlyList<Phrase> Chains { get; init; }
    /// <summary>What breaks while something is reached.</summary>
    public required IReadOnlyList<Phrase> Fragile { get; init; }
    /// <summary>The units of this assembly in the house.</summary>
    public required IReadOnlyList<UnitView> Units { get; init; }
    /// <summary>Notes about it.</summary>
    public required IReadOnlyList<Link> Notes { get; init; }
    /// <summary>Repairs inside it.</summary>
    public required IReadOnlyList<RepairLine> Repairs { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

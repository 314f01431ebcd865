namespace Crossref.Site.Pages.Views;

/// <summary>A machine: its plate, its counters, its repairs.</summary>
public sealed record MachineView
{
    /// <summary>Its plate.</summary>
    public required IReadOnlyList<Pair> Facts { get; init; }
    /// <summary>What can be opened.</summary>
    public required IReadOnlyList<AssemblyLine> Assemblies { get; init; }
    /// <summary>Counter readings, latest first.</summary>
    public required IReadOnlyList<ReadingRow> Readings { get; init; }
    /// <summary>Its repairs, latest first.</summary>
    public required IReadOnlyList<RepairLine> Repairs { get; init; }
    /// <summary>What was tried in it.</summary>
    public required IReadOnlyList<ClaimLine> Claims { get; init; }
    /// <summary>Units that sit in it.</summary>
    public required IReadOnlyList<UnitView> Units { get; init; }
    /// <summary>Notes about it.</summary>
    public required IReadOnlyList<Link> Notes { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

namespace Crossref.Site.Pages.Views;

/// <summary>A machine family.</summary>
public sealed record FamilyView
{
    /// <summary>Who makes it.</summary>
    public required string Maker { get; init; }
    /// <summary>Its models and their mains.</summary>
    public required IReadOnlyList<Pair> Models { get; init; }
    /// <summary>Its assemblies.</summary>
    public required IReadOnlyList<AssemblyLine> Assemblies { get; init; }
    /// <summary>Machines in the shop.</summary>
    public required IReadOnlyList<MachineLine> Machines { get; init; }
    /// <summary>Notes about it.</summary>
    public required IReadOnlyList<Link> Notes { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

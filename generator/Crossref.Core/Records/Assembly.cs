namespace Crossref.Core.Records;

/// <summary>A unit of a machine that is opened as one.</summary>
public sealed record Assembly
{
    /// <summary>Id within the family.</summary>
    public required string Id { get; init; }
    /// <summary>The family it belongs to.</summary>
    public required string Family { get; init; }
    /// <summary>family/assembly.</summary>
    public string Address => Family + "/" + Id;
    /// <summary>The name pages show.</summary>
    public required string Name { get; init; }
    /// <summary>Where it is written.</summary>
    public required Place Place { get; init; }
    /// <summary>How long to wait before opening; null when not stated.</summary>
    public TimeSpan? Cool { get; init; }
    /// <summary>Hazards, see <see cref="Hazard"/>.</summary>
    public IReadOnlyList<Hazard> Cautions { get; init; } = [];
    /// <summary>Tools wanted on the bench.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];
    /// <summary>The positions, as listed.</summary>
    public IReadOnlyList<Position> Positions { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

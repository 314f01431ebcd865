namespace Crossref.Core.Records;

/// <summary>One repair, as done, on a machine or on a unit at the bench.</summary>
public sealed record Repair : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Repair;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>The machine; null when a unit was worked on at the bench.</summary>
    public Ref? Machine { get; init; }
    /// <summary>The unit worked on at the bench; null when a machine was.</summary>
    public Ref? Unit { get; init; }
    /// <summary>When.</summary>
    public PartialDate Date { get; init; }
    /// <summary>Who did it.</summary>
    public string? By { get; init; }
    /// <summary>The machine's counter at the repair.</summary>
    public Count? Counter { get; init; }
    /// <summary>What led to it.</summary>
    public Ref? Symptom { get; init; }
    /// <summary>The assembly that was opened, by its address.</summary>
    public Ref? Assembly { get; init; }
    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> Found { get; init; } = [];
    /// <summary>What was taken out.</summary>
    public IReadOnlyList<Removal> Removed { get; init; } = [];
    /// <summary>What was put in.</summary>
    public IReadOnlyList<Fitting> Fitted { get; init; } = [];
    /// <summary>A whole unit that was changed.</summary>
    public Swap? Swapped { get; init; }
    /// <summary>How it ended.</summary>
    public Outcome? Outcome { get; init; }
    /// <summary>Whether the neighbours were damaged at the recheck; null when nobody looked.</summary>
    public bool? NeighboursDamaged { get; init; }
    /// <summary>Pictures.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

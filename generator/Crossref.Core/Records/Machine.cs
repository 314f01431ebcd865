namespace Crossref.Core.Records;

/// <summary>One machine in the shop.</summary>
public sealed record Machine : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Machine;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>What the shop calls it; null when the id will do.</summary>
    public string? Name { get; init; }
    /// <summary>Its family.</summary>
    public required Ref Family { get; init; }
    /// <summary>Its model; null when unknown.</summary>
    public string? Model { get; init; }
    /// <summary>Its serial; null when unknown.</summary>
    public string? Serial { get; init; }
    /// <summary>Its own mains voltage in volts, when it differs from its model's.</summary>
    public decimal? Mains { get; init; }
    /// <summary>Counter readings, as noted.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

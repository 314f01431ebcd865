namespace Crossref.Core.Records;

/// <summary>One individual assembly: in a machine, or idle.</summary>
public sealed record Unit : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Unit;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>Its family.</summary>
    public required Ref Family { get; init; }
    /// <summary>Which assembly it is, by its address.</summary>
    public required Ref Assembly { get; init; }
    /// <summary>The machine it sits in; null when it is idle (in the rack).</summary>
    public Ref? Machine { get; init; }
    /// <summary>Addresses of positions that are empty.</summary>
    public IReadOnlyList<Ref> Missing { get; init; } = [];
    /// <summary>Whether it must run again, so that what was taken out of it is owed.</summary>
    public bool BackInService { get; init; }
    /// <summary>Where it stands.</summary>
    public string? Bin { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

namespace Crossref.Core.Records;

/// <summary>Something bought.</summary>
public sealed record Order : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Order;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>What was ordered.</summary>
    public required Ref Part { get; init; }
    /// <summary>How many, 1 or more.</summary>
    public int Quantity { get; init; } = 1;
    /// <summary>When it was ordered.</summary>
    public PartialDate Date { get; init; }
    /// <summary>When it should come.</summary>
    public PartialDate Expected { get; init; }
    /// <summary>The unit or machine it is for; null for the shelf.</summary>
    public Ref? For { get; init; }
    /// <summary>When it came; null while it is on the way.</summary>
    public PartialDate? Received { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

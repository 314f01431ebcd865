namespace Crossref.Core.Records;

/// <summary>A bag of spare or used parts, all alike.</summary>
public sealed record Bag : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Bag;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>What is in it.</summary>
    public required Ref Part { get; init; }
    /// <summary>How many were bagged; repairs subtract.</summary>
    public int Quantity { get; init; } = 1;
    /// <summary>How good they are.</summary>
    public required Grade Grade { get; init; }
    /// <summary>Where it hangs.</summary>
    public string? Bin { get; init; }
    /// <summary>A machine, unit, repair or source it came from.</summary>
    public Ref? From { get; init; }
    /// <summary>The position it came out of.</summary>
    public Ref? Position { get; init; }
    /// <summary>The counter at removal.</summary>
    public Count? Counter { get; init; }
    /// <summary>The number moulded on it.</summary>
    public string? Number { get; init; }
    /// <summary>When it was bagged.</summary>
    public PartialDate Date { get; init; }
    /// <summary>Who tested it.</summary>
    public string? TestedBy { get; init; }
    /// <summary>What is wrong with it.</summary>
    public string? Defect { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

namespace Crossref.Core.Records;

/// <summary>A mark, noise or fault, and where to look.</summary>
public sealed record Symptom : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Symptom;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>The name pages show.</summary>
    public required string Name { get; init; }
    /// <summary>Which side of the fixing unit it comes from.</summary>
    public Side Where { get; init; } = Side.Any;
    /// <summary>Roles, most likely first.</summary>
    public IReadOnlyList<Ref> Suspects { get; init; } = [];
    /// <summary>What to check first, in order.</summary>
    public IReadOnlyList<string> Checks { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

namespace Crossref.Core.Records;

/// <summary>A machine family: its models and its assemblies.</summary>
public sealed record Family : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Family;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>The name pages show.</summary>
    public required string Name { get; init; }
    /// <summary>Who makes it.</summary>
    public required string Maker { get; init; }
    /// <summary>The models, in the maker's order.</summary>
    public IReadOnlyList<Model> Models { get; init; } = [];
    /// <summary>The assemblies, as listed.</summary>
    public IReadOnlyList<Assembly> Assemblies { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

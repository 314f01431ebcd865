namespace Crossref.Core.Records;

/// <summary>Where statements were read, measured or heard.</summary>
public sealed record Source : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Source;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>What kind of source.</summary>
    public required SourceType Kind { get; init; }
    /// <summary>The other library from which it came; null for one of our own.</summary>
    public string? From { get; init; }
    /// <summary>Its title.</summary>
    public required string Title { get; init; }
    /// <summary>When it was written or made.</summary>
    public PartialDate Dated { get; init; }
    /// <summary>Where the paper is kept.</summary>
    public string? Kept { get; init; }
    /// <summary>Who said or made it.</summary>
    public string? By { get; init; }
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
    /// <summary>Whether it is the maker's own document or a standard, so that a statement in it is documented.</summary>
    public bool Documents => Kind is SourceType.PartsList or SourceType.Manual or SourceType.Bulletin or SourceType.Standard;
}

namespace Crossref.Core.Records;

/// <summary>A Markdown note.</summary>
public sealed record Note : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Note;
    /// <summary>The file's name without its ending.</summary>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>Its title.</summary>
    public required string Title { get; init; }
    /// <summary>Record ids or position addresses it speaks of.</summary>
    public IReadOnlyList<Ref> About { get; init; } = [];
    /// <summary>The Markdown below the front matter.</summary>
    public required string Markdown { get; init; }
    /// <summary>How many lines of the file stand before <see cref="Markdown"/>.</summary>
    public int LinesBefore { get; init; }
    /// <summary>Every link to a record, as scheme:id.</summary>
    public IReadOnlyList<Ref> Links { get; init; } = [];
    /// <summary>Every picture it shows.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];
}

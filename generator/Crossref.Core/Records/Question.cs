namespace Crossref.Core.Records;

/// <summary>Something nobody knows yet, or knows at last.</summary>
public sealed record Question : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Question;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>The question.</summary>
    public required string Asks { get; init; }
    /// <summary>Record ids or position addresses.</summary>
    public IReadOnlyList<Ref> About { get; init; } = [];
    /// <summary>When it was asked.</summary>
    public PartialDate Date { get; init; }
    /// <summary>The answer; null while it is open.</summary>
    public string? Answer { get; init; }
    /// <summary>The claim or source that answers it.</summary>
    public Ref? AnsweredBy { get; init; }
    /// <summary>Whether nobody has answered it.</summary>
    public bool IsOpen => Answer is null && AnsweredBy is null;
}

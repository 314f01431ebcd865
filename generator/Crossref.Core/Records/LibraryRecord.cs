namespace Crossref.Core.Records;

/// <summary>The library's own document: whose copy this is and what counts as an answer here.</summary>
public sealed record LibraryRecord : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Library;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>The name pages show.</summary>
    public required string Title { get; init; }
    /// <summary>Mains voltage of the shop, in volts; null when not stated.</summary>
    public decimal? Mains { get; init; }
    /// <summary>Whether pages show lengths in inches instead of millimetres.</summary>
    public bool Inches { get; init; }
    /// <summary>Lowest standing that counts as an answer for a position that is not a safety one.</summary>
    public Basis AcceptFrom { get; init; } = Basis.Seated;
    /// <summary>What a run must reach to prove something.</summary>
    public Proving Proving { get; init; } = Proving.Default;
    /// <summary>Sources of other libraries that this one has checked.</summary>
    public IReadOnlyList<Ref> Confirmed { get; init; } = [];
}

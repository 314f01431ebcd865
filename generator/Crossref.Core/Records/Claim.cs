namespace Crossref.Core.Records;

/// <summary>Somebody's statement that a part fits, fits with a change, or does not fit.</summary>
public sealed record Claim : IRecord
{
    /// <inheritdoc/>
    public RecordType Type => RecordType.Claim;
    /// <inheritdoc/>
    public required string Id { get; init; }
    /// <inheritdoc/>
    public required Place Place { get; init; }
    /// <inheritdoc/>
    public bool Retired { get; init; }
    /// <summary>The part that was tried.</summary>
    public required Ref Part { get; init; }
    /// <summary>The position it was tried at; null when the claim compares two parts.</summary>
    public Ref? At { get; init; }
    /// <summary>The part it stands in for; null when the claim names a position.</summary>
    public Ref? Replaces { get; init; }
    /// <summary>A family or a position to which the comparison is limited; null for anywhere.</summary>
    public Ref? Where { get; init; }
    /// <summary>Whether the comparison holds in reverse too.</summary>
    public bool BothWays { get; init; }
    /// <summary>What it says; null for a withdrawal that says no more than that.</summary>
    public Verdict? Verdict { get; init; }
    /// <summary>What it rests on, as written; null when there is no verdict.</summary>
    public Basis? Basis { get; init; }
    /// <summary>How long it ran.</summary>
    public Count? Run { get; init; }
    /// <summary>The machines it speaks of.</summary>
    public Condition OnlyIf { get; init; } = Condition.None;
    /// <summary>What was done to make it fit.</summary>
    public string? Change { get; init; }
    /// <summary>Which way round it was fitted.</summary>
    public IReadOnlyDictionary<string, string> Orientation { get; init; } = Nothing.Texts;
    /// <summary>Where it was tried.</summary>
    public Ref? Machine { get; init; }
    /// <summary>Whether the neighbours were damaged at a recheck; null when nobody looked.</summary>
    public bool? NeighboursDamaged { get; init; }
    /// <summary>A source record or a repair.</summary>
    public Ref? Source { get; init; }
    /// <summary>Page, item or photo in the source.</summary>
    public string? Locator { get; init; }
    /// <summary>Who says so.</summary>
    public string? By { get; init; }
    /// <summary>When.</summary>
    public PartialDate Date { get; init; }
    /// <summary>An earlier claim about the same fact that this one takes back.</summary>
    public Ref? Withdraws { get; init; }
    /// <summary>Pictures.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];
    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

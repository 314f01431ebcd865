namespace Crossref.Site.Pages.Views;

/// <summary>One part in place of another.</summary>
public sealed record StandInRow
{
    /// <summary>The other part.</summary>
    public required PartLine Part { get; init; }
    /// <summary>Interchangeable, substitute, replacement, disputed or ruled out.</summary>
    public required Link Word { get; init; }
    /// <summary>The standing of the comparison; empty where there is none.</summary>
    public required string Standing { get; init; }
    /// <summary>How far it is said.</summary>
    public required Phrase Where { get; init; }
    /// <summary>Why, in a sentence.</summary>
    public required string Reason { get; init; }
    /// <summary>What has to be checked first; empty for nothing.</summary>
    public required string CheckFirst { get; init; }
    /// <summary>What has to be done to it.</summary>
    public string? Change { get; init; }
    /// <summary>How many usable pieces there are and where, in a few words.</summary>
    public required string InHouse { get; init; }
}

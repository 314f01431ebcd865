using Crossref.Core.Records;

namespace Crossref.Core.Interchange;

/// <summary>A part that may go in, by its best path of evidence.</summary>
public sealed record Candidate
{
    /// <summary>The part's id.</summary>
    public required string Part { get; init; }
    /// <summary>Whether it is only something to try: two substitutions or more, or a step that is only a lead.</summary>
    public required bool IsLead { get; init; }
    /// <summary>The rank of the weakest step.</summary>
    public required Basis Weakest { get; init; }
    /// <summary>"lead", or the word for the rank it stands with.</summary>
    public string Standing => IsLead ? StandingWord.Lead : Words.Of(Weakest);
    /// <summary>Whether it counts as an answer here.</summary>
    public required bool Accepted { get; init; }
    /// <summary>Why, in one plain sentence.</summary>
    public required string Reason { get; init; }
    /// <summary>The path, the position's own step first.</summary>
    public required IReadOnlyList<PathStep> Steps { get; init; }
    /// <summary>What to check first, and when it does not go in.</summary>
    public required IReadOnlyList<string> Conditions { get; init; }
    /// <summary>What has to be done to make it fit, in the order of the path.</summary>
    public required IReadOnlyList<string> Changes { get; init; }
    /// <summary>Hazards at the assembly, by their words.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
    /// <summary>Where it lies in the house.</summary>
    public required IReadOnlyList<InHouse> InHouse { get; init; }
}

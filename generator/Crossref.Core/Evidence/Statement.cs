using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>One thing that is said about a fact, with what it counts for before anything is proven.</summary>
public sealed record Statement
{
    /// <summary>Where it comes from.</summary>
    public required StatementKind Kind { get; init; }
    /// <summary>The claim's id, <c>repair/position</c>, or <c>listed/position</c>.</summary>
    public required string Id { get; init; }
    /// <summary>The part it speaks of.</summary>
    public required string Part { get; init; }
    /// <summary>What it says.</summary>
    public required Verdict Verdict { get; init; }
    /// <summary>Whether it says that the part goes in.</summary>
    public bool IsPositive => Verdict != Verdict.DoesNotFit;
    /// <summary>What it counts for: the basis as written, lowered where it lacks what that basis needs.</summary>
    public required Basis Basis { get; init; }
    /// <summary>Why <see cref="Basis"/> is lower than what is written; null when it is not.</summary>
    public string? Lowered { get; init; }
    /// <summary>The family or position that a comparison of two parts is limited to; null for anywhere.</summary>
    public string? Where { get; init; }
    /// <summary>The machines it speaks of.</summary>
    public Condition OnlyIf { get; init; } = Condition.None;
    /// <summary><see cref="OnlyIf"/> term by term.</summary>
    public IReadOnlyList<Term> Terms { get; init; } = [];
    /// <summary>Whether it speaks of a machine: it does when every term holds, and does not when one is false.</summary>
    public Truth HoldsFor(MachineContext machine) => Terms.Count == 0 ? Truth.True : Terms.Min(t => t.HoldsFor(machine));
    /// <summary>What was done to make it fit; null for nothing.</summary>
    public string? Change { get; init; }
    /// <summary>How long it ran; null when it did not, or nobody counted.</summary>
    public Count? Run { get; init; }
    /// <summary>Whether its neighbours were damaged; null when nobody looked.</summary>
    public bool? NeighboursDamaged { get; init; }
    /// <summary>How it failed early; null when it did not.</summary>
    public string? Failure { get; init; }
    /// <summary>The machine it was tried in.</summary>
    public string? Machine { get; init; }
    /// <summary>The shop that says so.</summary>
    public required string Shop { get; init; }
    /// <summary>The source or repair.</summary>
    public string? Source { get; init; }
    /// <summary>Where in the source.</summary>
    public string? Locator { get; init; }
    /// <summary>Who says so.</summary>
    public string? By { get; init; }
    /// <summary>When.</summary>
    public PartialDate Date { get; init; }
}

using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>What the naive reading of the rules answers for one position.</summary>
internal sealed record NaiveAnswer(
    IReadOnlyList<NaiveCandidate> Candidates, IReadOnlyList<string> Disputed, IReadOnlyList<string> RuledOut)
{
    /// <summary>Everything in it, one line each, so that two answers compare as texts.</summary>
    public override string ToString() => string.Join("\n",
        [.. Candidates.Select(c => c.ToString()), "disputed: " + string.Join(" ", Disputed), "ruled out: " + string.Join(" ", RuledOut)]);
}

/// <summary>One part that may go in.</summary>
internal sealed record NaiveCandidate(
    string Part, string Standing, Basis Weakest, bool Accepted,
    IReadOnlyList<NaiveStep> Steps, IReadOnlyList<string> Conditions, IReadOnlyList<string> Changes)
{
    public override string ToString() =>
        $"{Part}: {Standing} ({Words.Of(Weakest)}){(Accepted ? " accepted" : "")}; {string.Join(", ", Steps)}; " +
        $"if [{string.Join("; ", Conditions)}]; change [{string.Join("; ", Changes)}]";
}

/// <summary>One step of a path; <paramref name="Via"/> is the other position of a same-position step.</summary>
internal sealed record NaiveStep(StepKind Kind, string From, string To, Basis Standing, string? Via)
{
    public override string ToString() => $"{Words.Of(Kind)} {From}>{To} {Words.Of(Standing)}{(Via is null ? "" : " at " + Via)}";
}

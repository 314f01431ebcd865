using Crossref.Core.Evidence;
using Crossref.Core.Records;

namespace Crossref.Core.Interchange;

/// <summary>A path of evidence from a position to a part, with what it adds up to. Immutable; a longer path keeps its prefix.</summary>
internal sealed record Path
{
    internal Path? Before { get; init; }
    internal required PathStep Step { get; init; }
    /// <summary>The fact behind the step; null for a supersession, and for a lead, where two facts are.</summary>
    internal Fact? Fact { get; init; }
    internal required Basis Weakest { get; init; }
    internal required int Length { get; init; }
    /// <summary>Steps after the first, supersessions left out.</summary>
    internal int Counted { get; init; }
    internal int Substitutions { get; init; }
    /// <summary>Whether the position or a part on the path is a safety one.</summary>
    internal bool Safety { get; init; }
    internal bool IsLead => Substitutions > 1 || Step.Kind is StepKind.SamePosition or StepKind.SameSize;
    internal IReadOnlyList<string> Parts { get; init; } = [];
    /// <summary>Terms of the leading statements, known to hold or not: two that exclude each other end the path.</summary>
    internal IReadOnlyList<Term> Terms { get; init; } = [];
    /// <summary>What to check first, and exceptions; these are weighed.</summary>
    internal IReadOnlyList<string> Conditions { get; init; } = [];
    /// <summary>Conditions and changes at the other position of a lead, and exceptions said of the position itself: shown, not weighed.</summary>
    internal IReadOnlyList<string> Shown { get; init; } = [];
    internal IReadOnlyList<string> Changes { get; init; } = [];

    internal string Part => Step.To;

    /// <summary>The path with one more step.</summary>
    internal static Path Extend(Path? before, PathStep step, Fact? fact, bool safety) => new()
    {
        Before = before,
        Step = step,
        Fact = fact,
        Weakest = before is null || step.Standing < before.Weakest ? step.Standing : before.Weakest,
        Length = (before?.Length ?? 0) + 1,
        Counted = before is null ? 0 : before.Counted + (step.Kind == StepKind.Superseded ? 0 : 1),
        Substitutions = (before?.Substitutions ?? 0) + (step.Kind == StepKind.Substitution ? 1 : 0),
        Safety = safety || before is { Safety: true },
        Parts = [.. before?.Parts ?? [], step.To],
        Terms = Union(before?.Terms, fact?.Leading?.Terms),
        Conditions = Union(before?.Conditions, fact is null ? null : Wording.ConditionsOf(fact)),
        Changes = Union(before?.Changes, fact?.Leading?.Change is { } change ? [change] : null),
    };

    /// <summary>The steps, the position's own first.</summary>
    internal IReadOnlyList<PathStep> Steps
    {
        get
        {
            var steps = new PathStep[Length];
            for (var path = this; path is not null; path = path.Before) steps[path.Length - 1] = path.Step;
            return steps;
        }
    }

    /// <summary>
    /// Below zero when this path counts before the other: an answer before a lead, then the stronger weakest step, then
    /// fewer steps, then fewer conditions, then the parts along it, then the kinds of its steps.
    /// </summary>
    internal int CompareTo(Path other)
    {
        var order = (IsLead, -(int)Weakest, Length, Conditions.Count)
            .CompareTo((other.IsLead, -(int)other.Weakest, other.Length, other.Conditions.Count));
        return order != 0 ? order : CompareRoute(other);
    }

    /// <summary>
    /// Whether whatever may follow the other path may follow this one too, and never for the worse. Only then may the
    /// other be forgotten.
    /// </summary>
    internal bool Dominates(Path other) =>
        Weakest >= other.Weakest && Substitutions <= other.Substitutions && Counted <= other.Counted && Length <= other.Length &&
        Within(Parts, other.Parts) && Within(Terms, other.Terms) && Within(Conditions, other.Conditions) &&
        (Length < other.Length || CompareRoute(other) <= 0);

    // Between paths of one length: the parts along them, then the kinds of their steps.
    private int CompareRoute(Path other)
    {
        for (var i = 0; i < Parts.Count; i++)
            if (string.CompareOrdinal(Parts[i], other.Parts[i]) is var order and not 0) return order;
        return Steps.Zip(other.Steps, (one, two) => one.Kind.CompareTo(two.Kind)).FirstOrDefault(order => order != 0);
    }

    private static bool Within<T>(IReadOnlyList<T> some, IReadOnlyList<T> all) => some.All(all.Contains);

    private static IReadOnlyList<T> Union<T>(IReadOnlyList<T>? first, IReadOnlyList<T>? second) =>
        second is null or [] ? first ?? [] : first is null or [] ? second : [.. first.Union(second)];
}

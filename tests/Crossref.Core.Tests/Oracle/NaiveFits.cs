using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>
/// The rules of evidence and interchange read word by word: every path is walked, and paths are compared two by two. Slow on
/// purpose, so that each sentence can be found again. A mutation leaves one rule out or turns it round.
/// </summary>
internal sealed class NaiveFits
{
    private readonly Library _library;
    private readonly Mutation? _mutation;
    private readonly NaiveStatements _statements;
    private readonly NaiveFacts _facts;
    private readonly NaiveSizes _sizes;
    private readonly Dictionary<(string, string, string, NaiveConditions.Context), NaiveFact> _known = [];

    internal NaiveFits(Library library, Mutation? mutation = null)
    {
        _library = library;
        _mutation = mutation;
        _statements = new NaiveStatements(library, Believes);
        _facts = new NaiveFacts(library, _statements, Believes);
        _sizes = new NaiveSizes(Believes);
    }

    private bool Believes(Mutation mutation) => _mutation == mutation;

    /// <summary>A step, what it demands and what it carries.</summary>
    private sealed record Step(
        NaiveStep Shown, IReadOnlyList<Condition> Weighed, IReadOnlyList<string> Counted, IReadOnlyList<string> Conditions,
        IReadOnlyList<string> Changes);

    private sealed record Path(string Part, bool IsLead, Basis Weakest, bool IsSafety, IReadOnlyList<Step> Steps)
    {
        internal IEnumerable<string> Parts => Steps.Select(s => s.Shown.To);
        internal IEnumerable<string> Counted => Steps.SelectMany(s => s.Counted);
        internal bool NoConditions => Steps.All(s => s.Conditions.Count == 0);
    }

    /// <summary>"For position X, optionally in machine M."</summary>
    internal NaiveAnswer At(string address, string? machine)
    {
        var x = _library.Positions[address];
        // A machine of another family has no position X: X is judged as Y is, without a machine then.
        var inFamily = machine is not null && _library.Machines[machine].Family.Id == x.Family;
        var context = _facts.ContextOf(inFamily || Believes(Mutation.MachineOfAnotherFamilyJudges) ? machine : null);
        var parts = _library.Parts.Keys.Where(_statements.IsInUse).Order(StringComparer.Ordinal).ToList();

        // "A part with a direct ruled out or disputed at X is that"
        List<string> disputed = [], ruledOut = [];
        foreach (var part in parts)
        {
            var state = Direct(part, x, context).State;
            if (state == FactState.Disputed) disputed.Add(part);
            if (state == FactState.RuledOut) ruledOut.Add(part);
        }

        // "A must-match attribute known to differ from every part listed at X whose condition is not false rules out"
        var listed = Listed(x, context);
        var mismatched = parts.Where(p => _sizes.RuledOut(_library.Parts[p], listed)).ToList();
        foreach (var part in disputed.Where(mismatched.Contains).ToList())
        {
            if (Believes(Mutation.MismatchedDisputeStaysDisputed)) break;
            disputed.Remove(part);
            ruledOut.Add(part);
        }
        if (Believes(Mutation.MismatchedWithoutPathCounts)) ruledOut.AddRange(mismatched.Except(ruledOut));

        var paths = new List<Path>();
        var refused = ruledOut.ToList();
        foreach (var steps in Walk(x, machine, context, parts))
        {
            var end = steps[^1].Shown.To;
            // "and carries no path on"
            var on = steps.Select(s => s.Shown.To).ToList();
            if (disputed.Contains(end) || ruledOut.Contains(end)) continue;
            if (on.Any(disputed.Contains) && !Believes(Mutation.DisputedStaysOnPaths)) continue;
            if (on.Any(refused.Contains) && !Believes(Mutation.RuledOutStaysOnPaths)) continue;
            if (on.SkipLast(1).Any(mismatched.Contains) && !Believes(Mutation.MismatchedStaysOnPaths)) continue;
            if (Form(steps, x) is not { } path) continue;
            if (!mismatched.Contains(end)) paths.Add(path);
            else if (!ruledOut.Contains(end)) ruledOut.Add(end);
        }

        if (Believes(Mutation.NegativeSubstitutionRulesOut))
            foreach (var path in paths)
                foreach (var part in parts)
                    if (part != path.Part && Stand(part, path.Part, x, context).State == FactState.RuledOut && !ruledOut.Contains(part))
                        ruledOut.Add(part);

        // "otherwise its best path counts"
        var best = new List<Path>();
        foreach (var part in parts)
        {
            if (ruledOut.Contains(part)) continue;
            Path? first = null;
            foreach (var path in paths)
                if (path.Part == part && (first is null || IsBetter(path, first))) first = path;
            if (first is not null) best.Add(first);
        }

        // "Candidates are sorted by standing, weakest rank, fewest steps, part id."
        best.Sort(Order);
        ruledOut.Sort(StringComparer.Ordinal);
        return new NaiveAnswer([.. best.Select(path => Candidate(path, x, context))], disputed, ruledOut);
    }

    // Every path, however weak: "A path starts with a listed or claim step at X and may go on, from any part Q reached".
    private List<List<Step>> Walk(Position x, string? machine, NaiveConditions.Context context, List<string> parts)
    {
        var all = new List<List<Step>>();
        foreach (var part in parts)
            if (Direct(part, x, context) is { Stands: true } fact)
                GoOn([StepOf(fact.Leading!.IsListing || (fact.IsListed && Believes(Mutation.ListedWheneverListed)) ? StepKind.Listed : StepKind.Claim, x.Address, part, fact)]);
        return all;

        void GoOn(List<Step> steps)
        {
            all.Add(steps);
            // "a lead step comes last"
            if (steps[^1].Shown.Kind is StepKind.SamePosition or StepKind.SameSize && !Believes(Mutation.LeadGoesOn)) return;
            var q = steps[^1].Shown.To;
            foreach (var p in parts)
            {
                // "no part twice"
                if (steps.Any(s => s.Shown.To == p)) continue;
                foreach (var step in Steps(q, p, x, machine, context, parts))
                {
                    // "At most three steps follow the first, superseded ones not counted"
                    var counted = steps.Skip(1).Append(step).Count(s =>
                        s.Shown.Kind != StepKind.Superseded || Believes(Mutation.SupersededIsLimited));
                    var limit = Believes(Mutation.TwoStepsAtMost) ? 2 : Believes(Mutation.FourStepsAtMost) ? 4 : 3;
                    if (counted <= limit) GoOn([.. steps, step]);
                }
            }
        }
    }

    private IEnumerable<Step> Steps(
        string q, string p, Position x, string? machine, NaiveConditions.Context context, List<string> parts)
    {
        // "substitution: a fact says P may replace Q (a negative or disputed one removes the step)"
        var stand = Believes(Mutation.SubstitutionRunsBackwards) ? Stand(q, p, x, context) : Stand(p, q, x, context);
        if (stand.Stands && !Believes(Mutation.NoSubstitution)) yield return StepOf(StepKind.Substitution, q, p, stand);
        if (stand.State == FactState.Disputed && Believes(Mutation.DisputedSubstitutionSteps))
            yield return new Step(new NaiveStep(StepKind.Substitution, q, p, Basis.Told, null), [], [], [], []);

        // "superseded: Q is superseded by P (one way; documented if Q's own source documents, else told)"
        var (older, newer) = (_library.Parts[q], _library.Parts[p]);
        if ((older.SupersededBy?.Id == p || (newer.SupersededBy?.Id == q && Believes(Mutation.SupersededRunsBackwards))) &&
            !Believes(Mutation.NoSuperseded))
        {
            var documented = _statements.Documents(older.Source);
            if (Believes(Mutation.SupersededAlwaysDocumented)) documented = true;
            if (Believes(Mutation.SupersededAlwaysTold)) documented = false;
            yield return new Step(
                new NaiveStep(StepKind.Superseded, q, p, documented ? Basis.Documented : Basis.Told, null), [], [], [], []);
        }

        // "same size (lead): P and Q, of one kind …; ranks as measured"
        if (_sizes.Same(newer, older) && !Believes(Mutation.NoSameSize))
            yield return new Step(
                new NaiveStep(StepKind.SameSize, q, p, Believes(Mutation.SameSizeRanksAsTold) ? Basis.Told : Basis.Measured, null), [], [], [], []);

        // "same position (lead): P and Q, of one kind, both stand directly at measured or better at another position Y
        // (judged in M when Y is in M's family, else without a machine); ranks as the weaker of the two at the best Y"
        if (Believes(Mutation.NoSamePosition)) yield break;
        if (older.Kind != newer.Kind && !Believes(Mutation.SamePositionOfAnyKind)) yield break;
        Step? best = null;
        foreach (var y in _library.Positions.Values.OrderBy(y => y.Address, StringComparer.Ordinal))
        {
            if (y.Address == x.Address) continue;
            var inFamily = machine is not null && _library.Machines[machine].Family.Id == y.Family;
            if (Believes(Mutation.SamePositionAlwaysWithoutMachine)) inFamily = false;
            if (Believes(Mutation.SamePositionAlwaysInMachine)) inFamily = true;
            var there = _facts.ContextOf(inFamily ? machine : null);
            var (of, to) = (Direct(q, y, there), Direct(p, y, there));
            if (!of.Stands || !to.Stands) continue;
            var least = _facts.Rank(Believes(Mutation.SamePositionOfAnyRank) ? Basis.Told
                : Believes(Mutation.SamePositionFromRan) ? Basis.Ran : Basis.Measured);
            if (_facts.Rank(of.Rank!.Value) < least || _facts.Rank(to.Rank!.Value) < least) continue;
            var ofIsWeaker = _facts.Rank(of.Rank.Value) < _facts.Rank(to.Rank.Value);
            var weaker = ofIsWeaker != Believes(Mutation.SamePositionByTheStronger) ? of.Rank.Value : to.Rank.Value;
            // "Y's conditions are shown, not weighed": with Y's address before them, for they are none of X's.
            IReadOnlyList<string> shown = Believes(Mutation.SamePositionConditionsHidden)
                ? [] : [.. of.Conditions.Concat(to.Conditions).Select(c => $"at {y.Address}: {c}")];
            // "Conditions and changes add up along a path": what was done at Y is no change here yet, but worth knowing.
            if (!Believes(Mutation.SamePositionChangesHidden))
                shown = [.. shown, .. Changes(of).Concat(Changes(to)).Select(c => $"at {y.Address}: {c}")];
            var step = new Step(
                new NaiveStep(StepKind.SamePosition, q, p, weaker, y.Address),
                Believes(Mutation.SamePositionConditionsExclude) ? [of.Leading!.OnlyIf, to.Leading!.OnlyIf] : [],
                Believes(Mutation.SamePositionConditionsCount) ? shown : [],
                shown, []);
            var order = best is null ? 1 : _facts.Rank(weaker) - _facts.Rank(best.Shown.Standing);
            if (best is not null && Believes(Mutation.SamePositionWorst)) order = -order;
            if (order > 0 || (order == 0 && Believes(Mutation.SamePositionLastAddress))) best = step;
        }
        if (best is not null) yield return best;
    }

    // "every part listed at X whose condition is not false"
    private List<Part> Listed(Position x, NaiveConditions.Context context) => x.Listed
        .Where(l => _library.Parts.TryGetValue(l.Part.Id, out var part) && (!part.Retired || Believes(Mutation.MustMatchRetiredListedCounts)))
        .Where(l => _facts.Holds(l.OnlyIf, context) switch
        {
            Truth.False => Believes(Mutation.MustMatchFalseListingCounts),
            Truth.Unknown => !Believes(Mutation.MustMatchUnknownListingIsNone),
            _ => true,
        })
        .Select(l => _library.Parts[l.Part.Id]).ToList();

    private Step StepOf(StepKind kind, string from, string to, NaiveFact fact) => new(
        new NaiveStep(kind, from, to, fact.Rank!.Value, null),
        Believes(Mutation.ExceptionsExclude) ? [fact.Leading!.OnlyIf, .. fact.Exceptions.Select(e => e.OnlyIf)] : [fact.Leading!.OnlyIf],
        Believes(Mutation.BestCountsNoExceptions) ? fact.CheckFirst : fact.Conditions, fact.Conditions, Changes(fact));

    private static IReadOnlyList<string> Changes(NaiveFact fact) => fact.Leading!.Change is { } change ? [change] : [];

    // A walk as a path, or nothing when its conditions or the safety rules remove it.
    private Path? Form(List<Step> steps, Position x)
    {
        // "two that exclude each other removes the path": the conditions of the leading statements of its steps
        for (var i = 0; i < steps.Count; i++)
            for (var j = 0; j < i; j++)
                foreach (var one in steps[i].Weighed)
                    foreach (var other in steps[j].Weighed)
                        if (_facts.Exclude(one, other)) return null;

        // "A path's standing is the weakest of its steps."
        var weakest = steps.Select(s => s.Shown.Standing).MinBy(_facts.Rank);
        if (Believes(Mutation.FirstStepIsTheStanding)) weakest = steps[0].Shown.Standing;
        if (Believes(Mutation.LastStepIsTheStanding)) weakest = steps[^1].Shown.Standing;

        // "One substitution keeps its standing; two or more, or a lead step, make it a lead"
        var substitutions = steps.Count(s => s.Shown.Kind == StepKind.Substitution ||
            (s.Shown.Kind == StepKind.Superseded && Believes(Mutation.SupersededIsASubstitution)));
        var most = Believes(Mutation.OneSubstitutionIsALead) ? 0 : Believes(Mutation.TwoSubstitutionsKeep) ? 99
            : Believes(Mutation.ThreeSubstitutionsMakeALead) ? 2 : 1;
        var chain = substitutions > most;
        var leadStep = steps.Any(s => s.Shown.Kind is StepKind.SamePosition or StepKind.SameSize);
        var isLead = chain || (leadStep && !Believes(Mutation.LeadStepKeeps));

        // "A path is under the safety rules if X or any part on it is a safety one: … leads are not formed at all"
        var safeParts = steps.Select(s => _facts.IsSafety(_library.Parts[s.Shown.To])).ToList();
        var safety = (_facts.IsSafety(x) && !Believes(Mutation.SafetyOfPartsOnly)) ||
            (safeParts.Contains(true) && !Believes(Mutation.SafetyOfPositionOnly) && (safeParts[^1] || !Believes(Mutation.SafetyOfLastPartOnly)));
        if (safety && isLead)
        {
            var formed = Believes(Mutation.SafetyFormsLeads) || (!leadStep && Believes(Mutation.SafetyFormsChains));
            if (!formed) return null;
        }
        return new Path(steps[^1].Shown.To, isLead, weakest, safety, steps);
    }

    // "highest standing, then highest weakest rank, then fewest steps, then fewest conditions, then the part ids along
    // it (ordinal)", and then the kinds of its steps in the order they are named.
    private bool IsBetter(Path one, Path other)
    {
        if (Believes(Mutation.DirectAlwaysWins) && one.Steps.Count == 1 != (other.Steps.Count == 1)) return one.Steps.Count == 1;
        if (one.IsLead != other.IsLead && !Believes(Mutation.BestIgnoresStanding)) return !one.IsLead;
        var (rank, otherRank) = (_facts.Rank(one.Weakest), _facts.Rank(other.Weakest));
        if (rank != otherRank && !Believes(Mutation.BestIgnoresWeakest)) return rank > otherRank;
        if (one.Steps.Count != other.Steps.Count && !Believes(Mutation.BestIgnoresSteps))
            return one.Steps.Count < other.Steps.Count != Believes(Mutation.BestTakesMostSteps);
        var (conditions, otherConditions) = Believes(Mutation.BestCountsConditionsTwice)
            ? (one.Counted.Count(), other.Counted.Count()) : (one.Counted.Distinct().Count(), other.Counted.Distinct().Count());
        if (conditions != otherConditions && !Believes(Mutation.BestIgnoresConditions))
            return conditions < otherConditions != Believes(Mutation.BestTakesMostConditions);
        foreach (var (part, otherPart) in one.Parts.Zip(other.Parts))
            if (part != otherPart && !Believes(Mutation.BestIgnoresParts)) return string.CompareOrdinal(part, otherPart) < 0;
        foreach (var (step, otherStep) in one.Steps.Zip(other.Steps))
            if (step.Shown.Kind != otherStep.Shown.Kind)
                return Place(step.Shown.Kind) < Place(otherStep.Shown.Kind) != Believes(Mutation.BestIgnoresKinds);
        return false;
    }

    private static int Place(StepKind kind) => kind switch
    {
        StepKind.Listed => 1,
        StepKind.Claim => 2,
        StepKind.Substitution => 3,
        StepKind.Superseded => 4,
        StepKind.SamePosition => 5,
        _ => 6,
    };

    private int Order(Path one, Path other)
    {
        if (one.IsLead != other.IsLead && !Believes(Mutation.SortIgnoresStanding)) return one.IsLead ? 1 : -1;
        var (rank, otherRank) = (_facts.Rank(one.Weakest), _facts.Rank(other.Weakest));
        if (rank != otherRank && !Believes(Mutation.SortIgnoresWeakest)) return otherRank - rank;
        if (one.Steps.Count != other.Steps.Count && !Believes(Mutation.SortIgnoresSteps)) return one.Steps.Count - other.Steps.Count;
        return string.CompareOrdinal(one.Part, other.Part) * (Believes(Mutation.SortPartsBackwards) ? -1 : 1);
    }

    private NaiveCandidate Candidate(Path path, Position x, NaiveConditions.Context context)
    {
        var conditions = Believes(Mutation.ConditionsOfFirstStepOnly)
            ? path.Steps[0].Conditions : [.. path.Steps.SelectMany(s => s.Conditions)];
        // "a negative one does not count but is carried as an exception": also when the part is reached over another.
        if (!Believes(Mutation.ExceptionsOfOtherStepsHidden))
            conditions = [.. conditions, .. path.Steps.Skip(1).SelectMany(s => Direct(s.Shown.To, x, context).ExceptionTexts)];
        var changes = Believes(Mutation.ChangesOfFirstStepOnly)
            ? path.Steps[0].Changes : [.. path.Steps.SelectMany(s => s.Changes)];
        return new NaiveCandidate(
            path.Part, path.IsLead ? "lead" : Words.Of(path.Weakest), path.Weakest, Accepted(path),
            [.. path.Steps.Select(s => s.Shown)], [.. conditions.ToHashSet().Order(StringComparer.Ordinal)], [.. changes.Distinct()]);
    }

    private bool Accepted(Path path)
    {
        // "leads … something to try, never an answer"
        if (path.IsLead && !Believes(Mutation.AcceptLeads)) return false;
        // "accepted means documented with no condition unknown"
        if (path.IsSafety && !Believes(Mutation.SafetyAcceptsFromSetting))
            return path.Weakest == Basis.Documented && (path.NoConditions || Believes(Mutation.SafetyAcceptsUnderConditions));
        // "Accepted: standing ≥ accept-from."
        var (rank, from) = (_facts.Rank(path.Weakest), _facts.Rank(_library.Card.AcceptFrom));
        return Believes(Mutation.AcceptEverything) || (Believes(Mutation.AcceptAboveOnly) ? rank > from : rank >= from);
    }

    // A fact is judged once for a machine and then remembered.
    private NaiveFact Direct(string part, Position at, NaiveConditions.Context context) =>
        Remember((part, "", at.Address, context), () => _facts.Direct(part, at, context));

    private NaiveFact Stand(string part, string instead, Position at, NaiveConditions.Context context) =>
        Remember((part, instead, at.Address, context), () => _facts.Stand(part, instead, at, context));

    private NaiveFact Remember((string, string, string, NaiveConditions.Context) key, Func<NaiveFact> judge)
    {
        if (!_known.TryGetValue(key, out var fact)) _known[key] = fact = judge();
        return fact;
    }
}

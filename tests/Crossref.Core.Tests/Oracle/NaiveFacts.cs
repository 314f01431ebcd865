using Crossref.Core.Evidence;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>What the statements about one fact come to for one machine.</summary>
internal sealed record NaiveFact(
    FactState State, Basis? Rank, NaiveStatement? Leading, IReadOnlyList<string> CheckFirst, IReadOnlyList<NaiveStatement> Exceptions,
    IReadOnlyList<string> ExceptionTexts, bool IsListed)
{
    internal IReadOnlyList<string> Conditions => [.. CheckFirst, .. ExceptionTexts];
    internal bool Stands => State == FactState.Stands;
}

/// <summary>The rules of evidence from "proven" on: statements to standing.</summary>
internal sealed class NaiveFacts(Library library, NaiveStatements statements, Func<Mutation, bool> believes)
{
    private readonly List<NaiveStatement> _all = statements.All();
    private readonly NaiveConditions _conditions = new(library, believes);

    /// <summary>"Bases, strongest first, with rank"</summary>
    internal int Rank(Basis basis)
    {
        var (low, high) = (Basis.Told, Basis.Told);
        if (believes(Mutation.ProvenAboveDocumented)) (low, high) = (Basis.Proven, Basis.Documented);
        if (believes(Mutation.RanAboveProven)) (low, high) = (Basis.Ran, Basis.Proven);
        if (believes(Mutation.SeatedAboveRan)) (low, high) = (Basis.Seated, Basis.Ran);
        if (believes(Mutation.MouldedAboveSeated)) (low, high) = (Basis.Moulded, Basis.Seated);
        if (believes(Mutation.MeasuredAboveMoulded)) (low, high) = (Basis.Measured, Basis.Moulded);
        if (believes(Mutation.OfferedAboveMeasured)) (low, high) = (Basis.Offered, Basis.Measured);
        if (believes(Mutation.ToldAboveOffered)) (low, high) = (Basis.Told, Basis.Offered);
        if (basis == low) basis = high;
        else if (basis == high) basis = low;
        return basis switch
        {
            Basis.Documented => 8,
            Basis.Proven => 7,
            Basis.Ran => 6,
            Basis.Seated => 5,
            Basis.Moulded => 4,
            Basis.Measured => 3,
            Basis.Offered => 2,
            _ => 1,
        };
    }

    /// <summary>"A part is a safety part by its kind or safety: true"</summary>
    internal bool IsSafety(Part part) =>
        (part.Safety && !believes(Mutation.SafetyPartNotByMark)) || (part.Kind.Safety && !believes(Mutation.SafetyNotByKind));

    /// <summary>"a position is one by its kind, by safety: true, or when any part listed there is"</summary>
    internal bool IsSafety(Position position)
    {
        if (position.Kind.Safety && !believes(Mutation.SafetyNotByKind)) return true;
        if (position.Safety && !believes(Mutation.SafetyPositionNotByMark)) return true;
        return !believes(Mutation.SafetyPositionNotByListedPart) &&
            position.Listed.Any(l => library.Parts.TryGetValue(l.Part.Id, out var part) && IsSafety(part) &&
                (!part.Retired || !believes(Mutation.SafetyPositionNotByRetiredPart)));
    }

    /// <summary>The fact (part, position).</summary>
    internal NaiveFact Direct(string part, Position position, NaiveConditions.Context context) =>
        Judge(
            _all.Where(s => s.Part == part && s.At == position.Address).ToList(),
            IsSafety(position), IsSafety(library.Parts[part]), context);

    /// <summary>The fact (part, other part), "where <c>where</c> (default anywhere) covers the position asked about".</summary>
    internal NaiveFact Stand(string part, string instead, Position position, NaiveConditions.Context context) =>
        Judge(
            _all.Where(s => s.Part == part && s.Replaces == instead && Covers(s.Where, position)).ToList(),
            IsSafety(position), IsSafety(library.Parts[part]) || IsSafety(library.Parts[instead]), context);

    /// <summary>Whether no statement of this condition can be met together with one of the other.</summary>
    internal bool Exclude(Condition one, Condition other) => _conditions.Exclude(one, other);

    internal Truth Holds(Condition condition, NaiveConditions.Context context) => _conditions.Holds(condition, context);

    internal NaiveConditions.Context ContextOf(string? machine) => _conditions.ContextOf(machine);

    internal Truth HoldsTerm(Condition term, NaiveConditions.Context context) => _conditions.HoldsTerm(term, context);

    private bool Covers(string? where, Position position)
    {
        if (believes(Mutation.WhereIsIgnored)) return true;
        if (where is null) return !believes(Mutation.WhereDefaultsToNowhere);
        if (where == position.Family) return !believes(Mutation.WhereFamilyCoversNothing);
        return where == position.Address ||
            (believes(Mutation.WherePositionCoversFamily) && where.StartsWith(position.Family + "/", StringComparison.Ordinal));
    }

    private NaiveFact Judge(List<NaiveStatement> said, bool safePlace, bool safePart, NaiveConditions.Context context)
    {
        said = Raise(said);

        // "False sets a claim or listing aside. Unknown: a positive one counts and carries the condition; a negative
        // one does not count but is carried as an exception — on a safety position or part it counts."
        var unknownCounts =
            (safePlace && !believes(Mutation.UnknownNegativeSparesSafetyPosition)) ||
            (safePart && !believes(Mutation.UnknownNegativeSparesSafetyPart)) || believes(Mutation.UnknownNegativeCounts);
        List<NaiveStatement> positives = [], negatives = [], exceptions = [];
        foreach (var statement in said)
        {
            var holds = _conditions.Holds(statement.OnlyIf, context);
            if (holds == Truth.False && !believes(Mutation.FalseStillCounts)) continue;
            if (statement.Positive)
            {
                if (holds == Truth.Unknown && believes(Mutation.UnknownPositiveIsOut)) continue;
                positives.Add(statement);
            }
            else if (holds == Truth.Unknown && !unknownCounts) exceptions.Add(statement);
            else negatives.Add(statement);
        }

        // "With p, n the best ranks of the positives and negatives that count"
        var p = positives.Count == 0 ? 0 : positives.Max(s => Rank(s.Basis));
        var n = negatives.Count == 0 ? 0 : negatives.Max(s => Rank(s.Basis));
        var any = n > 0 && (
            (safePlace && !believes(Mutation.NegativeSparesSafetyPosition)) ||
            (safePart && !believes(Mutation.NegativeSparesSafetyPart)) || believes(Mutation.NegativeAlwaysRulesOut));

        FactState state;
        if (p == 0 && n == 0) state = FactState.Nothing;
        else if (p == 0 && believes(Mutation.LoneNegativeIsNothing)) state = FactState.Nothing;
        // "On a safety position or part any negative that counts rules out."
        else if (any) state = FactState.RuledOut;
        else if (n > p) state = FactState.RuledOut;
        else if (n == p) state = FactState.Disputed;
        else state = FactState.Stands;

        if (!any && p > 0)
        {
            if (n > p && believes(Mutation.StrongerNegativeDisputes)) state = FactState.Disputed;
            if (n > p && believes(Mutation.StrongerNegativeIsIgnored)) state = FactState.Stands;
            if (n == p && believes(Mutation.TieStands)) state = FactState.Stands;
            if (n == p && believes(Mutation.TieIsRuledOut)) state = FactState.RuledOut;
            if (0 < n && n < p && believes(Mutation.WeakerNegativeDisputes)) state = FactState.Disputed;
        }
        if (believes(Mutation.NoExceptionCarried)) exceptions.Clear();
        IReadOnlyList<string> exceptionTexts =
            [.. exceptions.Select(e => "not when " + string.Join(", ", Excepted(e, context).Select(NaiveConditions.Words)))];
        if (state != FactState.Stands) return new NaiveFact(state, null, null, [], exceptions, exceptionTexts, false);

        // "The leading statement, whose conditions and change are carried"
        var leading = positives[0];
        foreach (var other in positives.Skip(1))
            if (Leads(other, leading, context)) leading = other;
        var checkFirst = believes(Mutation.NoCheckFirstCarried) ? []
            : believes(Mutation.KnownTermsCarriedToo) ? NaiveConditions.Terms(leading.OnlyIf) : Unknown(leading, context);
        return new NaiveFact(
            state, positives.MaxBy(s => Rank(s.Basis))!.Basis, leading, [.. checkFirst.Select(NaiveConditions.Words)], exceptions,
            exceptionTexts, positives.Any(s => s.IsListing));
    }

    private List<Condition> Excepted(NaiveStatement exception, NaiveConditions.Context context) =>
        believes(Mutation.ExceptionSaysUnknownTermsOnly) ? Unknown(exception, context) : NaiveConditions.Terms(exception.OnlyIf);

    private List<Condition> Unknown(NaiveStatement statement, NaiveConditions.Context context) =>
        NaiveConditions.Terms(statement.OnlyIf).Where(t => HoldsTerm(t, context) == Truth.Unknown).ToList();

    // "highest rank, then no change, then fewest conditions, then a listing, then latest date, then lowest id"
    private bool Leads(NaiveStatement one, NaiveStatement other, NaiveConditions.Context context)
    {
        if (Rank(one.Basis) != Rank(other.Basis) && !believes(Mutation.LeadingOfAnyRank)) return Rank(one.Basis) > Rank(other.Basis);
        if (one.Change is null != other.Change is null && !believes(Mutation.LeadingChangeIgnored))
            return (one.Change is null) != believes(Mutation.LeadingWithChangeFirst);
        var (few, many) = (Unknown(one, context).Count, Unknown(other, context).Count);
        if (few != many && !believes(Mutation.LeadingConditionsIgnored))
            return (few < many) != believes(Mutation.LeadingMostConditions);
        if (one.IsListing != other.IsListing) return one.IsListing != believes(Mutation.LeadingListingLast);
        if (one.Date != other.Date) return (one.Date > other.Date) != believes(Mutation.LeadingEarliestDate);
        var order = string.CompareOrdinal(one.Id, other.Id);
        return believes(Mutation.LeadingHighestId) ? order > 0 : order < 0;
    }

    // "Proven is never written, it is reached … Only the claims that prove rise."
    private List<NaiveStatement> Raise(List<NaiveStatement> said)
    {
        var pool = believes(Mutation.PairOfDifferentFacts) ? _all : said;
        var raised = said.Select(s => Proves(s, pool) ? s with { Basis = Basis.Proven } : s).ToList();
        if (believes(Mutation.EveryRunOfAProvenFactRises) && raised.Any(s => s.Basis == Basis.Proven))
            raised = raised.Select(s => s.Basis == Basis.Ran && s.Positive ? s with { Basis = Basis.Proven } : s).ToList();
        return raised;
    }

    // "by a sourced positive ran claim whose neighbours were not damaged" (one without a source counts as told; a
    // reverse never proves)
    private bool MayProve(NaiveStatement s) =>
        s.Basis == Basis.Ran && !s.IsReverse && s.Run is not null &&
        (s.Positive || believes(Mutation.NegativesProve)) &&
        (s.Damaged != true || believes(Mutation.DamagedNeighboursProve)) &&
        (s.Damaged is not null || !believes(Mutation.UnseenNeighboursProveNothing));

    private bool Proves(NaiveStatement s, List<NaiveStatement> said)
    {
        if (!MayProve(s)) return false;
        var (run, proving) = (s.Run!.Value, library.Card.Proving);

        // "when its sheets reach share-of-life × the part's life (if known)", counted in the same unit
        var life = library.Parts[s.Part].Life;
        if (life is null && believes(Mutation.UnknownLifeProves)) return true;
        if (life is { } l && (l.Unit == run.Unit || believes(Mutation.LifeInAnyUnit)) && !believes(Mutation.ShareOfLifeProvesNothing) &&
            (Reaches(run.Value, proving.ShareOfLife * l.Value, Mutation.ShareOfLifeMustBeExceeded) || believes(Mutation.AnyShareOfLifeProves)))
            return true;

        // "or by two such claims with the same only-if, each at or above proving.sheets, from two shops or two
        // different named machines"
        if (believes(Mutation.PairProvesNothing)) return false;
        foreach (var other in said)
        {
            if (ReferenceEquals(other, s) || !MayProve(other)) continue;
            if (!Same(s.OnlyIf, other.OnlyIf) && !believes(Mutation.PairOfAnyConditions)) continue;
            if (!LongEnough(run) && !believes(Mutation.PairOfAnyLength)) continue;
            if (!LongEnough(other.Run!.Value) && !believes(Mutation.PairOfAnyLength) && !believes(Mutation.PairOfOneLongRun)) continue;
            if (s.Shop != other.Shop && !believes(Mutation.TwoShopsProveNothing)) return true;
            if ((s.Machine is null || other.Machine is null) && !believes(Mutation.PairOfUnnamedMachines)) continue;
            if (s.Machine == other.Machine && !believes(Mutation.PairOfOneMachine)) continue;
            return true;
        }
        return false;
    }

    private bool LongEnough(Count run)
    {
        var proving = library.Card.Proving;
        var needed = run.Unit == CountUnit.Hours && !believes(Mutation.PairInHoursLikeSheets) ? proving.Hours : proving.Sheets;
        return Reaches(run.Value, needed, Mutation.PairMustExceed);
    }

    private bool Reaches(decimal value, decimal needed, Mutation must) => believes(must) ? value > needed : value >= needed;

    private static bool Same(Condition one, Condition other) =>
        one.Models.OrderBy(m => m, StringComparer.Ordinal).Distinct().SequenceEqual(other.Models.OrderBy(m => m, StringComparer.Ordinal).Distinct()) &&
        one.SerialFrom == other.SerialFrom && one.SerialTo == other.SerialTo && one.Mains == other.Mains;
}

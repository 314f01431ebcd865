using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>One thing said about (part, position) or (part, other part).</summary>
internal sealed record NaiveStatement
{
    internal required string Id { get; init; }
    internal required string Part { get; init; }
    /// <summary>The position; null when another part is named.</summary>
    internal string? At { get; init; }
    /// <summary>The part it may stand in for; null when a position is named.</summary>
    internal string? Replaces { get; init; }
    /// <summary>A family or position; null for anywhere.</summary>
    internal string? Where { get; init; }
    internal required bool Positive { get; init; }
    internal required Basis Basis { get; init; }
    internal bool IsListing { get; init; }
    internal bool IsReverse { get; init; }
    internal Condition OnlyIf { get; init; } = Condition.None;
    internal string? Change { get; init; }
    internal Count? Run { get; init; }
    internal bool? Damaged { get; init; }
    internal string? Machine { get; init; }
    /// <summary>The other library that says so; empty for our own.</summary>
    internal string Shop { get; init; } = "";
    internal PartialDate Date { get; init; }
}

/// <summary>Everything a library says, before a machine is asked about: the rules of evidence up to the withdrawals, and the repairs.</summary>
internal sealed class NaiveStatements(Library library, Func<Mutation, bool> believes)
{
    internal List<NaiveStatement> All()
    {
        var all = new List<NaiveStatement>();
        all.AddRange(Listings());
        all.AddRange(Claims());
        all.AddRange(Fittings());
        return all;
    }

    // Retired records count for nothing.
    internal bool IsInUse(string part) =>
        library.Parts.TryGetValue(part, out var p) && (!p.Retired || believes(Mutation.RetiredPartsCount));

    /// <summary>"source of type parts-list, manual, bulletin or standard"</summary>
    internal bool Documents(Ref? source)
    {
        if (source is null) return believes(Mutation.NoSourceNeeded);
        if (!library.Sources.TryGetValue(source.Value.Id, out var s)) return believes(Mutation.AnySourceDocuments);
        if (s.Retired && !believes(Mutation.RetiredSourcesCount)) return false;
        if (believes(Mutation.AnySourceDocuments)) return true;
        if (believes(Mutation.NoSourceDocuments)) return false;
        // "A documenting source that came from another library documents nothing here until confirmed names it"
        var confirmed = library.Card.Confirmed.Any(c => c.Id == s.Id) && !believes(Mutation.ConfirmedSourcesDocumentNothing);
        if (s.From is not null && !confirmed && !believes(Mutation.ForeignSourcesDocument)) return false;
        return s.Kind is SourceType.PartsList or SourceType.Manual or SourceType.Bulletin or SourceType.Standard;
    }

    // A source record or a repair.
    private bool HasSource(Claim claim)
    {
        if (believes(Mutation.NoSourceNeeded)) return true;
        if (claim.Source is not { } source) return false;
        if (library.Sources.TryGetValue(source.Id, out var s)) return !s.Retired || believes(Mutation.RetiredSourcesCount);
        return library.Repairs.TryGetValue(source.Id, out var r) && (!r.Retired || believes(Mutation.RetiredRepairsCount));
    }

    // "Being listed is a positive statement about (part, position), documented if the position's source documents,
    // else told."
    private IEnumerable<NaiveStatement> Listings()
    {
        if (believes(Mutation.ListingSaysNothing)) yield break;
        foreach (var position in library.Positions.Values)
            foreach (var listing in position.Listed)
            {
                var documented = Documents(position.Source);
                if (believes(Mutation.ListingAlwaysDocumented)) documented = true;
                if (believes(Mutation.ListingNeverDocumented)) documented = false;
                yield return new NaiveStatement
                {
                    Id = "listed/" + position.Id, Part = listing.Part.Id, At = position.Address, Positive = true, IsListing = true,
                    Basis = documented ? Basis.Documented : Basis.Told,
                    OnlyIf = believes(Mutation.ListingConditionIgnored) ? Condition.None : listing.OnlyIf,
                };
            }
    }

    private IEnumerable<NaiveStatement> Claims()
    {
        foreach (var claim in library.Claims.Values)
        {
            if (claim.Retired && !believes(Mutation.RetiredClaimsCount)) continue;
            // "verdict and basis may then be left out": a withdrawal that says no more than that.
            if (claim.Verdict is not { } verdict || claim.Basis is not { } written) continue;
            if (IsWithdrawn(claim.Id)) continue;
            var forward = new NaiveStatement
            {
                Id = claim.Id, Part = claim.Part.Id, At = claim.At?.Id, Replaces = claim.Replaces?.Id, Where = claim.Where?.Id,
                Positive = verdict != Verdict.DoesNotFit, Basis = Effective(claim, written), OnlyIf = claim.OnlyIf,
                Change = claim.Change, Run = claim.Run, Damaged = claim.NeighboursDamaged, Machine = claim.Machine?.Id,
                Date = claim.Date, Shop = ShopOf(claim.Id),
            };
            yield return forward;
            // "both-ways states the reverse too; the reverse of ran or seated counts as measured"
            if (forward.Replaces is null) continue;
            if (believes(Mutation.OneWayIsBothWays) || (claim.BothWays && !believes(Mutation.BothWaysIsOneWay)))
                yield return forward with
                {
                    IsReverse = true, Part = forward.Replaces, Replaces = forward.Part,
                    Basis = Reversed(forward.Basis),
                };
        }
    }

    private Basis Reversed(Basis basis)
    {
        if (believes(Mutation.ReverseIsAlwaysMeasured)) return Basis.Measured;
        if (basis == Basis.Ran && !believes(Mutation.ReverseKeepsRan)) return Basis.Measured;
        if (basis == Basis.Seated && !believes(Mutation.ReverseKeepsSeated)) return Basis.Measured;
        return basis;
    }

    private Basis Effective(Claim claim, Basis written)
    {
        // "A claim without a source counts as told"
        if (!HasSource(claim)) return Basis.Told;
        // "documented needs a source of type parts-list, manual, bulletin or standard, else it counts as told"
        if (written == Basis.Documented && !Documents(claim.Source)) return Basis.Told;
        // "ran below proving.ran counts as seated"
        if (written == Basis.Ran && !CountsAsRan(claim.Run)) return ShortRun();
        return written;
    }

    private Basis ShortRun() =>
        believes(Mutation.ShortRunCountsAsRan) ? Basis.Ran : believes(Mutation.ShortRunCountsAsTold) ? Basis.Told : Basis.Seated;

    // Cycles compare like sheets; hours from proving.ran × proving.hours / proving.sheets.
    private bool CountsAsRan(Count? run)
    {
        if (run is not { } count) return false;
        var proving = library.Card.Proving;
        if (count.Unit == CountUnit.Cycles && believes(Mutation.CyclesNeverRun)) return false;
        if (count.Unit == CountUnit.Hours && !believes(Mutation.HoursRunLikeSheets))
            return Reaches(count.Value, proving.Ran * proving.Hours / proving.Sheets);
        return Reaches(count.Value, proving.Ran);
    }

    private bool Reaches(decimal value, decimal needed) => believes(Mutation.RunMustExceed) ? value > needed : value >= needed;

    // "A withdrawn claim is out, unless the withdrawal is itself withdrawn"
    private bool IsWithdrawn(string id)
    {
        if (believes(Mutation.WithdrawalsDoNothing)) return false;
        foreach (var other in library.Claims.Values)
        {
            if (other.Withdraws?.Id != id) continue;
            // "its withdrawals work on its own claims only"
            if (ShopOf(other.Id) != ShopOf(id) && !believes(Mutation.ForeignWithdrawalsWork)) continue;
            if (other.Retired && !believes(Mutation.RetiredClaimsCount)) continue;
            if (believes(Mutation.WithdrawnWithdrawalsStillWork) || !IsWithdrawn(other.Id)) return true;
        }
        return false;
    }

    // "Repairs are evidence too: fitting a part that is not listed yields a claim <repair>/<position>"
    private IEnumerable<NaiveStatement> Fittings()
    {
        if (believes(Mutation.FittingSaysNothing)) yield break;
        foreach (var repair in library.Repairs.Values)
        {
            if (repair.Retired && !believes(Mutation.RetiredRepairsCount)) continue;
            if (repair.Machine is null && believes(Mutation.BenchFittingSaysNothing)) continue;
            foreach (var fitting in repair.Fitted)
            {
                if (!library.Positions.TryGetValue(fitting.Position.Id, out var position)) continue;
                var listed = position.Listed.Any(l => l.Part.Id == fitting.Part.Id);
                if (listed && !believes(Mutation.FittingOfListedPartSaysToo)) continue;
                var id = repair.Id + "/" + position.Id;
                if (IsWithdrawn(id) && !believes(Mutation.WithdrawalOfARepairDoesNothing)) continue;
                var own = repair.Machine is { } machine && (ShopOf(machine.Id) == ShopOf(repair.Id) || believes(Mutation.ForeignRepairsReadOurCounters));
                var (run, failed) = own ? RunOf(repair, position) : (null, false);
                yield return new NaiveStatement
                {
                    Id = id, Part = fitting.Part.Id, At = position.Address, Positive = true,
                    Basis = BasisOf(fitting.Part.Id, run, failed), Run = run,
                    Change = believes(Mutation.FittingChangeIgnored) ? null : fitting.Change,
                    Damaged = believes(Mutation.FittingNeighboursIgnored) ? null : repair.NeighboursDamaged,
                    Machine = believes(Mutation.FittingInNoMachine) ? null : repair.Machine?.Id, Date = repair.Date, Shop = ShopOf(repair.Id),
                };
            }
        }
    }

    // "addressed library:id from here"
    private static string ShopOf(string id) => id.Contains(':', StringComparison.Ordinal) ? id.Split(':')[0] : "";

    // "seated, and ran with the counts"; "A part that came out broken or worn before share-of-life counts as seated":
    // one whose life is unknown, or counted in another unit, has not reached it.
    private Basis BasisOf(string part, Count? run, bool failed)
    {
        if (run is not { } count || believes(Mutation.FittingNeverRan) || !CountsAsRan(count)) return Basis.Seated;
        if (failed && !believes(Mutation.FailureIsIgnored))
        {
            var life = library.Parts.GetValueOrDefault(part)?.Life;
            var reached = life is { } l && l.Unit == count.Unit && count.Value >= library.Card.Proving.ShareOfLife * l.Value;
            if (life is null && believes(Mutation.UnknownLifeWasReached)) reached = true;
            if (!reached || believes(Mutation.FailureAlwaysLowers)) return Basis.Seated;
        }
        return Basis.Ran;
    }

    // "until that position's part is removed or the unit swapped, else until the machine's latest reading"
    private (Count? Run, bool Failed) RunOf(Repair start, Position position)
    {
        // Repairs of that machine after this one, by date and then by id.
        var later = library.Repairs.Values
            .Where(r => (!r.Retired || believes(Mutation.RetiredRepairsCount)) && r.Machine?.Id == start.Machine!.Value.Id && IsOfItsShop(r, start))
            .Where(r => r.Date > start.Date || (r.Date == start.Date && string.CompareOrdinal(r.Id, start.Id) > 0))
            .OrderBy(r => believes(Mutation.RepairsById) ? PartialDate.Unknown : r.Date).ThenBy(r => r.Id, StringComparer.Ordinal);
        var end = later.FirstOrDefault(r => Ends(r, position));
        var failed = end is not null && (
            (!believes(Mutation.FindingsAreNoFailure) && end.Found.Any(f => f.Position.Id == position.Address && MeansFailed(f.Condition))) ||
            (!believes(Mutation.RemovedConditionsAreNoFailure) && end.Removed.Any(r => r.Position.Id == position.Address && MeansFailed(r.Condition))));

        // Without a counter, or without a date that says where in the machine's life it was, nothing is counted.
        if (start.Counter is not { } first || start.Date.IsUnknown) return (null, failed);
        if (end is null && believes(Mutation.OpenRunCountsNothing)) return (null, failed);

        // Every point of the total counter in this unit, in the order of dates, on one date by value (the counter is set
        // anew after what was read that day), from the one of this repair to the one of the end (or, when nobody read
        // the counter then, to the end's date).
        var points = Points(start).Where(p => believes(Mutation.OtherUnitsCount) || p.Unit == first.Unit)
            .OrderBy(p => p.Date).ThenBy(p => p.Reset != believes(Mutation.ResetComesFirst)).ThenBy(p => p.Value).ToList();
        points = points.Where(p => p.Date > start.Date || (p.Date == start.Date && ((p.Reset && !believes(Mutation.ResetComesFirst)) || p.Value >= first.Value))).ToList();
        if (end is not null)
        {
            var last = end.Counter is { } c && c.Unit == first.Unit ? c.Value : (decimal?)null;
            points = points.Where(p => p.Date < end.Date || (p.Date == end.Date && (last is null || (!p.Reset && p.Value <= last)))).ToList();
        }
        var (run, before) = (0m, first.Value);
        foreach (var (_, value, _, reset) in points)
        {
            // "the sum of the rises", the jump at a reset left out.
            if (believes(Mutation.DropCounts)) run += value - before;
            else if ((!reset || believes(Mutation.ResetIsNoReset)) && value > before) run += value - before;
            before = value;
        }
        return (new Count(run, first.Unit), failed);
    }

    private bool IsOfItsShop(Repair repair, Repair start) =>
        ShopOf(repair.Id) == ShopOf(start.Id) || believes(Mutation.ForeignRepairsReadOurCounters);

    private bool Ends(Repair repair, Position position)
    {
        if (repair.Removed.Any(r => r.Position.Id == position.Address || believes(Mutation.OtherPositionEnds)) &&
            !believes(Mutation.FittingIgnoresRemoval)) return true;
        if (repair.Fitted.Any(f => f.Position.Id == position.Address) && !believes(Mutation.FittingIgnoresRefit)) return true;
        return repair.Swapped is { } swap && !believes(Mutation.FittingIgnoresSwap) &&
            (swap.Assembly.Id == position.Family + "/" + position.Assembly || believes(Mutation.AnySwapEnds));
    }

    // The words that are no failure; every other word is.
    private bool MeansFailed(string? condition)
    {
        if (condition is null) return false;
        if (believes(Mutation.SoundWordsFail)) return true;
        if (believes(Mutation.DirtyFails) && condition == "dirty") return true;
        return condition is not ("good" or "ok" or "sound" or "undamaged" or "clean" or "dirty");
    }

    // Readings of the machine's total counter, and the counters noted in its repairs.
    private List<(PartialDate Date, decimal Value, CountUnit Unit, bool Reset)> Points(Repair start)
    {
        var points = new List<(PartialDate, decimal, CountUnit, bool)>();
        foreach (var machine in library.Machines.Values)
        {
            if (machine.Id != start.Machine!.Value.Id && !believes(Mutation.OtherMachinesCount)) continue;
            if (machine.Retired && !believes(Mutation.RetiredMachinesCount)) continue;
            foreach (var reading in machine.Readings)
                if (reading.Counter is null || believes(Mutation.OtherCountersCount))
                    points.Add((reading.Date, reading.Count.Value, reading.Count.Unit, reading.Reset));
        }
        foreach (var repair in library.Repairs.Values)
            if (repair.Machine?.Id == start.Machine!.Value.Id && IsOfItsShop(repair, start) && (!repair.Retired || believes(Mutation.RetiredRepairsCount)) &&
                repair.Counter is { } count && (!believes(Mutation.RepairsAreNoReadings) || repair == start))
                points.Add((repair.Date, count.Value, count.Unit, false));
        return points;
    }
}

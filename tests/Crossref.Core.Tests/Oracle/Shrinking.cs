using Crossref.Core.Records;

namespace Crossref.Core.Tests.Oracle;

/// <summary>Makes a failing library small: leaves out whatever the failure does not need, until nothing more can go.</summary>
internal static class Shrinking
{
    internal static Draft Shrink(Draft draft, Func<Draft, bool> fails)
    {
        for (var smaller = true; smaller;)
        {
            smaller = false;
            foreach (var less in Less(draft))
                if (IsWhole(less) && fails(less))
                {
                    draft = less;
                    smaller = true;
                    break;
                }
        }
        return draft;
    }

    // Whether every record and position named is there: the checks refuse any other library.
    private static bool IsWhole(Draft draft)
    {
        var library = draft.Freeze();
        var there = library.Records.Keys.Concat(library.Families.Values.SelectMany(f => f.Assemblies).SelectMany(a => a.Positions).Select(p => p.Address))
            .Concat(library.Repairs.Values.SelectMany(r => r.Fitted.Select(f => r.Id + "/" + f.Position.Id.Split('/')[^1]))).ToHashSet();
        // Machines of another shop are named, but not on record.
        return draft.Records.SelectMany(Names).All(r => r is not { } name || there.Contains(name.Id) || Owner.Of(name.Id) is not null);
    }

    private static IEnumerable<Ref?> Names(IRecord record) => record switch
    {
        Part p => [p.Source, p.SupersededBy],
        Family f => f.Assemblies.SelectMany(a => a.Positions).SelectMany(p => p.Listed.Select(l => (Ref?)l.Part).Append(p.Source)),
        Machine m => [m.Family],
        Repair r => r.Fitted.SelectMany(f => new Ref?[] { f.Part, f.Position })
            .Concat(r.Removed.SelectMany(x => new Ref?[] { x.Part, x.Position })).Concat(r.Found.Select(f => (Ref?)f.Position)).Append(r.Machine),
        Claim c => [c.Part, c.At, c.Replaces, c.Where, c.Source, c.Machine, c.Withdraws],
        _ => [],
    };

    private static IEnumerable<Draft> Less(Draft draft)
    {
        for (var i = 0; i < draft.Records.Count; i++)
        {
            yield return draft with { Records = [.. draft.Records.Where((_, j) => j != i)] };
            foreach (var simpler in Simpler(draft.Records[i]))
                yield return draft with { Records = [.. draft.Records.Select((r, j) => j == i ? simpler : r)] };
        }
    }

    private static IEnumerable<IRecord> Simpler(IRecord record)
    {
        switch (record)
        {
            case Claim claim:
                if (!claim.OnlyIf.IsNone) yield return claim with { OnlyIf = Condition.None };
                if (claim.Machine is not null) yield return claim with { Machine = null };
                if (claim.NeighboursDamaged is not null) yield return claim with { NeighboursDamaged = null };
                if (claim.BothWays) yield return claim with { BothWays = false };
                if (claim.Where is not null) yield return claim with { Where = null };
                if (claim.Source is not null) yield return claim with { Source = null };
                if (claim.Withdraws is not null && claim.Verdict is not null) yield return claim with { Withdraws = null };
                if (!claim.Date.IsUnknown) yield return claim with { Date = PartialDate.Unknown };
                break;
            case Part part:
                if (part.SupersededBy is not null) yield return part with { SupersededBy = null };
                if (part.Source is not null) yield return part with { Source = null };
                if (part.Life is not null) yield return part with { Life = null };
                if (part.Standard is not null) yield return part with { Standard = null };
                foreach (var size in part.Sizes.Keys)
                    yield return part with { Sizes = part.Sizes.Where(s => s.Key != size).ToDictionary(s => s.Key, s => s.Value) };
                if (part.Safety) yield return part with { Safety = false };
                break;
            case Machine machine:
                for (var i = 0; i < machine.Readings.Count; i++)
                    yield return machine with { Readings = [.. machine.Readings.Where((_, j) => j != i)] };
                if (machine.Model is not null) yield return machine with { Model = null };
                if (machine.Serial is not null) yield return machine with { Serial = null };
                if (machine.Mains is not null) yield return machine with { Mains = null };
                break;
            case Repair repair:
                for (var i = 0; i < repair.Fitted.Count; i++)
                    yield return repair with { Fitted = [.. repair.Fitted.Where((_, j) => j != i)] };
                if (repair.Removed.Count > 0) yield return repair with { Removed = [] };
                if (repair.Found.Count > 0) yield return repair with { Found = [] };
                if (repair.Swapped is not null) yield return repair with { Swapped = null };
                if (repair.Counter is not null) yield return repair with { Counter = null };
                break;
            case Family family:
                foreach (var less in Simpler(family)) yield return less;
                break;
        }
    }

    // One position or one listing less.
    private static IEnumerable<Family> Simpler(Family family)
    {
        foreach (var assembly in family.Assemblies)
            foreach (var position in assembly.Positions)
            {
                yield return With([.. assembly.Positions.Where(p => p != position)]);
                for (var i = 0; i < position.Listed.Count; i++)
                {
                    var less = position with { Listed = [.. position.Listed.Where((_, j) => j != i)] };
                    yield return With([.. assembly.Positions.Select(p => p == position ? less : p)]);
                }

                Family With(IReadOnlyList<Position> positions) => family with
                {
                    Assemblies = [.. family.Assemblies.Select(a => a == assembly ? a with { Positions = positions } : a)],
                };
            }
    }
}

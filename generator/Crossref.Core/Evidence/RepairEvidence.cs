using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>
/// What repairs show without anybody typing it twice: a part that is not listed for a position was fitted there, and
/// ran until it came out again.
/// </summary>
internal static class RepairEvidence
{
    internal static IEnumerable<(string Position, Statement Statement)> Of(Library library)
    {
        var rule = new BasisRule(library);
        foreach (var group in library.Repairs.Values.Where(r => !r.Retired).GroupBy(MachineOf, StringComparer.Ordinal))
        {
            var repairs = group.OrderBy(r => r.Date).ThenBy(r => r.Id, StringComparer.Ordinal).ToList();
            var counter = new CounterHistory(group.Key is { } id ? library.Machines.GetValueOrDefault(id) : null, repairs);
            for (var i = 0; i < repairs.Count; i++)
            {
                foreach (var fitting in repairs[i].Fitted)
                {
                    if (library.Positions.GetValueOrDefault(fitting.Position.Id) is not { } position) continue;
                    if (position.Listed.Any(l => l.Part.Id == fitting.Part.Id)) continue;
                    // Repairs of units at the bench have no machine in common and no counter.
                    var end = group.Key is null ? null : repairs.Skip(i + 1).FirstOrDefault(r => OpenFittings.Ends(r, position));
                    yield return (position.Address, Shown(library, rule, repairs[i], fitting, position, counter, end));
                }
            }
        }
    }

    // Whoever repairs another shop's machine has none of its counters.
    private static string? MachineOf(Repair repair) =>
        repair.Machine is { } machine && Owner.Of(machine.Id) == Owner.Of(repair.Id) ? machine.Id : null;

    private static Statement Shown(
        Library library, BasisRule rule, Repair repair, Fitting fitting, Position position, CounterHistory counter, Repair? end)
    {
        var run = MachineOf(repair) is null ? null : counter.Run(repair, end);
        var failure = end is null ? null : Failure(library, fitting, position, run, end);
        return new Statement
        {
            Kind = StatementKind.Repair,
            Id = $"{repair.Id}/{position.Id}",
            Part = fitting.Part.Id,
            Verdict = fitting.Change is null ? Verdict.Fits : Verdict.FitsWithChange,
            Basis = failure is null && rule.CountsAsRun(run) ? Basis.Ran : Basis.Seated,
            Change = fitting.Change,
            Run = run,
            Failure = failure,
            NeighboursDamaged = repair.NeighboursDamaged,
            Machine = repair.Machine?.Id,
            Shop = library.ShopOf(repair.Id),
            Source = repair.Id,
            By = repair.By,
            Date = repair.Date,
        };
    }

    // A part of unknown life that came out worn or broken cannot be said to have reached its share of it.
    private static string? Failure(Library library, Fitting fitting, Position position, Count? run, Repair end)
    {
        var condition = end.Found.FirstOrDefault(f => f.Position.Id == position.Address && f.Failed)?.Condition
            ?? end.Removed.FirstOrDefault(r => r.Position.Id == position.Address && Finding.MeansFailed(r.Condition))?.Condition;
        if (condition is null || ProofRule.ReachesShareOfLife(library, fitting.Part.Id, run)) return null;
        return run is null ? $"came out {condition}" : $"came out {condition} after {run}";
    }
}

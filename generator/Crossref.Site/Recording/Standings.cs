using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Site.Recording;

/// <summary>How the parts that new records speak of stand, before and after.</summary>
public static class Standings
{
    /// <summary>The standings that records touch, as a library sees them.</summary>
    /// <param name="library">The library with or without the records.</param>
    /// <param name="after">The library with them.</param>
    /// <param name="ids">The records' ids.</param>
    public static IReadOnlyList<Standing> Of(Library library, Library after, IEnumerable<string> ids)
    {
        var fits = new Fits(library);
        return [.. ids.SelectMany(id => Touched(after, after.Records[id])).Distinct()
            .Where(t => after.Parts.ContainsKey(t.Part) && after.Positions.ContainsKey(t.Position)).Select(t => Of(fits, t.Part, t.Position, MachineAt(after, t.Machine, t.Position)))];
    }

    private static IEnumerable<(string Part, string Position, string? Machine)> Touched(Library library, IRecord record) => record switch
    {
        Claim { At: { } at } claim => [(claim.Part.Id, at.Id, claim.Machine?.Id)],
        Claim { Replaces: { } other } claim => [.. Compared(library, claim, claim.Part.Id, other.Id), .. claim.BothWays ? Compared(library, claim, other.Id, claim.Part.Id) : []],
        Repair repair => repair.Fitted.Select(f => (f.Part.Id, f.Position.Id, repair.Machine?.Id))
            // What came out is of interest where it was evidence; a mere look counts for whatever is still in.
            .Concat(repair.Removed.Where(r => library.Positions.GetValueOrDefault(r.Position.Id)?.Listed.All(l => l.Part.Id != r.Part.Id) == true).Select(r => (r.Part.Id, r.Position.Id, repair.Machine?.Id)))
            .Concat(repair is { Machine: { } m, Fitted.Count: 0, Removed.Count: 0, Found.Count: 0, Swapped: null } ? OpenFittings.Of(library, m.Id).Select(o => (o.Fitting.Part.Id, o.Fitting.Position.Id, (string?)m.Id)) : []),
        _ => [],
    };

    // A comparison of two parts counts wherever the one is listed in whose place the other goes.
    private static IEnumerable<(string, string, string?)> Compared(Library library, Claim claim, string part, string insteadOf) =>
        library.Positions.Values.Where(p => p.Listed.Any(l => l.Part.Id == insteadOf))
            .Where(p => claim.Where is not { } where || where.Id == p.Family || where.Id == p.Address)
            .OrderBy(p => p.Address, StringComparer.Ordinal).Select(p => (part, p.Address, claim.Machine?.Id));

    private static string? MachineAt(Library library, string? machine, string position) =>
        machine is not null && library.Machines.GetValueOrDefault(machine)?.Family.Id == library.Positions[position].Family ? machine : null;

    private static Standing Of(Fits fits, string part, string position, string? machine)
    {
        var answer = fits.At(position, machine);
        if (answer.Candidates.FirstOrDefault(c => c.Part == part) is { } c) return new Standing(part, position, machine, c.Standing, c.Accepted, c.Reason);
        if (answer.RuledOut.FirstOrDefault(r => r.Part == part) is { } no) return new Standing(part, position, machine, StandingWord.RuledOut, false, no.Reason);
        if (answer.Disputed.FirstOrDefault(r => r.Part == part) is { } both) return new Standing(part, position, machine, StandingWord.Disputed, false, both.Reason);
        return new Standing(part, position, machine, StandingWord.Nothing, false, "Nothing is recorded.");
    }
}

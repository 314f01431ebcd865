using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>Finds what a machine's own counter was last known to show: by its readings, or by a repair that noted it.</summary>
public static class LastReading
{
    /// <summary>The last one up to a day; null when nothing was ever read.</summary>
    public static Reading? Of(Library library, string machine, DateOnly day) =>
        All(library, machine).Where(r => r.Date.Earliest <= day)
            // On one day the counter only rises, and a reset comes last.
            .OrderBy(r => r.Date).ThenBy(r => r.Reset).ThenBy(r => r.Count.Value).LastOrDefault();

    /// <summary>The unit in which a machine counts; sheets where nobody ever read it.</summary>
    public static CountUnit UnitOf(Library library, string machine) =>
        (Of(library, machine, DateOnly.MaxValue) ?? All(library, machine).FirstOrDefault())?.Count.Unit ?? CountUnit.Sheets;

    /// <summary>Whatever its own counter was known to show, in no order.</summary>
    public static IEnumerable<Reading> All(Library library, string machine) =>
        library.Machines[machine].Readings.Where(r => r.Counter is null)
            .Concat(library.Repairs.Values.Where(r => !r.Retired && r.Machine?.Id == machine && r.Counter is not null).Select(r => new Reading(r.Date, r.Counter!.Value, null, false, r.Place)));
}

using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>A machine's total counter over time, from its readings and from the repairs that noted it.</summary>
internal sealed class CounterHistory
{
    private sealed record Entry(PartialDate Date, Count Count, bool Reset, Repair? Repair);

    private readonly List<Entry> _entries;

    /// <summary>Puts readings and repairs in order. Repairs come in order of date and id.</summary>
    internal CounterHistory(Machine? machine, IEnumerable<Repair> repairs)
    {
        var readings = machine is { Retired: false } ? machine.Readings : [];
        // On one day the counter only rises, and a reset comes last: it is noted when the old value is known.
        _entries = [.. readings.Where(r => r.Counter is null).Select(r => new Entry(r.Date, r.Count, r.Reset, null))
            .Concat(repairs.Where(r => r.Counter is not null).Select(r => new Entry(r.Date, r.Counter!.Value, false, r)))
            .Where(e => !e.Date.IsUnknown)
            .OrderBy(e => e.Date).ThenBy(e => e.Reset).ThenBy(e => e.Count.Value)];
    }

    /// <summary>
    /// How far the counter rose from a repair to the one that ended the run, or to the latest reading; null when the
    /// repair noted no counter or nothing was read afterwards.
    /// </summary>
    internal Count? Run(Repair from, Repair? to)
    {
        if (from.Counter is not { } start) return null;
        var entries = _entries.Where(e => e.Count.Unit == start.Unit).ToList();
        var first = entries.FindIndex(e => e.Repair == from);
        if (first < 0) return null;
        var last = to is null ? entries.Count - 1 : entries.FindIndex(e => e.Repair == to);
        if (last < 0) last = entries.FindLastIndex(e => e.Date <= to!.Date);
        decimal rise = 0;
        for (var i = first + 1; i <= last; i++)
            if (!entries[i].Reset) rise += Math.Max(0, entries[i].Count.Value - entries[i - 1].Count.Value);
        return rise > 0 ? new Count(rise, start.Unit) : null;
    }
}

namespace Crossref.Site.Sharing.Histories;

/// <summary>Joins what two copies know of one record.</summary>
internal static class Joining
{
    /// <summary>Two copies of one library: whatever the order, the same comes out.</summary>
    internal static RecordHistory Join(RecordHistory one, RecordHistory other) => Join(one, other, _ => false);

    /// <summary>
    /// A record of another library joins ours. At keys that decide what documents, ours stays and theirs is offered.
    /// </summary>
    internal static RecordHistory Join(RecordHistory ours, RecordHistory theirs, Func<string, bool> isGuarded)
    {
        // Most records are the same since they were made, and need not be taken apart.
        if (ours.Only is { } mine && theirs.Only is { } same && mine.State == same.State) return OneOf(mine, same) == mine ? ours : theirs;
        var marks = new Dictionary<string, IReadOnlyList<Mark>>(StringComparer.Ordinal);
        foreach (var key in ours.Marks.Keys.Union(theirs.Marks.Keys))
        {
            var (here, there) = (ours.Marks.GetValueOrDefault(key) ?? [], theirs.Marks.GetValueOrDefault(key) ?? []);
            IReadOnlyList<Mark> joined = isGuarded(key)
                ? Sorted([.. here.Where(m => !m.IsOffered || !theirs.Known.Contains(m.State) || there.Any(t => t.State == m.State)), .. Offered(here, there, ours)])
                : Risen(here, there, Sorted(Merged(here, ours, there, theirs)));
            // Nothing is left at a key where one copy knows the text of the other and has it in a text that stands as a whole.
            if (joined.Count > 0) marks[key] = joined;
        }
        var spots = ours.Spots.Keys.Union(theirs.Spots.Keys).Where(marks.ContainsKey).ToDictionary(k => k, k =>
            !ours.Spots.TryGetValue(k, out var a) ? theirs.Spots[k] : !theirs.Spots.TryGetValue(k, out var b) ? a : Spot.Later(a, b), StringComparer.Ordinal);
        return new RecordHistory(ours.Type, new SortedSet<string>(ours.Known.Union(theirs.Known), StringComparer.Ordinal), marks, spots);
    }

    private static IEnumerable<Mark> Merged(IReadOnlyList<Mark> here, RecordHistory ours, IReadOnlyList<Mark> there, RecordHistory theirs)
    {
        foreach (var mark in here)
        {
            if (there.FirstOrDefault(t => t.State == mark.State) is { } same) yield return OneOf(mark, same);
            else if (!theirs.Known.Contains(mark.State)) yield return mark;
        }
        foreach (var mark in there)
        {
            if (!ours.Known.Contains(mark.State) && here.All(h => h.State != mark.State)) yield return mark;
        }
    }

    private static Mark OneOf(Mark a, Mark b)
    {
        var first = string.CompareOrdinal(a.Date + a.Library + a.Text, b.Date + b.Library + b.Text) <= 0 ? a : b;
        return first with { IsOffered = a.IsOffered || b.IsOffered };
    }

    // What is new to us and says something else.
    private static IEnumerable<Mark> Offered(IReadOnlyList<Mark> here, IReadOnlyList<Mark> there, RecordHistory ours) =>
        there.Where(t => !t.IsOffered && !ours.Known.Contains(t.State) && here.All(h => h.State != t.State)).Select(t => t with { IsOffered = true });

    // Who no longer puts something under the safety rules is not followed.
    private static IReadOnlyList<Mark> Risen(IReadOnlyList<Mark> here, IReadOnlyList<Mark> there, IReadOnlyList<Mark> merged)
    {
        var most = here.Concat(there).Select(m => ShownText.Safeties(m.Says)).DefaultIfEmpty().Max();
        return most == 0 || merged.Any(m => ShownText.Safeties(m.Says) >= most) ? merged
            : Sorted([.. merged, .. here.Concat(there).Where(m => ShownText.Safeties(m.Says) == most).DistinctBy(m => m.State)]);
    }

    private static List<Mark> Sorted(IEnumerable<Mark> marks) => [.. marks.OrderBy(m => m.State, StringComparer.Ordinal)];
}

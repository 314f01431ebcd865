namespace Crossref.Core.Lookup;

/// <summary>Writes which entries each filter leaves.</summary>
internal sealed class FilterTable
{
    // A page offers filters in a list; longer lists help nobody, and the first script must stay small.
    private const int MostValues = 500;

    private readonly SortedDictionary<string, SortedDictionary<string, List<int>>> _byName = new(StringComparer.Ordinal);

    public FilterTable(IReadOnlyList<LookupEntry> entries)
    {
        for (var i = 0; i < entries.Count; i++)
        {
            Add("type", entries[i].Type, i);
            Add("kind", entries[i].Kind, i);
            Add("standing", entries[i].Standing, i);
            foreach (var family in entries[i].Families)
            {
                Add("family", family, i);
            }
        }
    }

    /// <summary>The values a page may offer, by name of the filter and value.</summary>
    public IReadOnlyList<FilterValue> Values() =>
    [
        .. _byName.SelectMany(name => name.Value
            .OrderByDescending(value => value.Value.Count)
            .Take(MostValues)
            .Select(value => new FilterValue(name.Key, value.Key, value.Value.Count))
            .OrderBy(value => value.Value, StringComparer.Ordinal)),
    ];

    public TableShards Write(LookupLayout layout, ShardSink sink)
    {
        var byKey = _byName
            .SelectMany(name => name.Value.Select(value => (Key: IndexFormat.FilterKey(name.Key, value.Key), Entries: value.Value)))
            .GroupBy(filter => filter.Key)
            .OrderBy(group => group.Key, StringComparer.Ordinal);
        var table = new TableWriter(IndexFormat.Filters, layout.ShardLimit, sink);
        foreach (var group in byKey)
        {
            foreach (var text in RunCoder.Chunks([.. group.SelectMany(filter => filter.Entries).Distinct().Order()], layout.HeadLimit))
            {
                table.Add(group.Key, text);
            }
        }

        return table.Finish();
    }

    private void Add(string name, string? value, int entry)
    {
        var shown = RecordCoder.Clean(value ?? "");
        if (shown.Length == 0)
        {
            return;
        }

        _byName.TryAdd(name, new SortedDictionary<string, List<int>>(StringComparer.Ordinal));
        _byName[name].TryAdd(shown, []);
        var list = _byName[name][shown];
        if (list.Count == 0 || list[^1] != entry)
        {
            list.Add(entry);
        }
    }
}

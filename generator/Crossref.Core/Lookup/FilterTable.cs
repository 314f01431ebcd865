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
        var byKey = new SortedDictionary<string, SortedSet<int>>(StringComparer.Ordinal);
        foreach (var (name, values) in _byName)
        {
            foreach (var (value, entries) in values)
            {
                var key = IndexFormat.FilterKey(name, value);
                byKey.TryAdd(key, []);
                byKey[key].UnionWith(entries);
            }
        }

        var table = new TableWriter(IndexFormat.Filters, layout.ShardLimit, sink);
        foreach (var (key, entries) in byKey)
        {
            foreach (var text in RunCoder.Chunks([.. entries], layout.HeadLimit))
            {
                table.Add(key, text);
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

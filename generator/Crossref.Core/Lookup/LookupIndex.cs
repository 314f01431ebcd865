namespace Crossref.Core.Lookup;

/// <summary>Builds the index that <see cref="LookupReader"/> and the site's script read.</summary>
public static class LookupIndex
{
    /// <summary>Builds an index. The order of the entries does not matter.</summary>
    /// <param name="entries">What is to be found; type and id together unique.</param>
    /// <param name="layout">How to cut it into files; the measured sizes when left out.</param>
    /// <exception cref="ArgumentException">Two entries have the same type and id.</exception>
    public static LookupFiles Build(IEnumerable<LookupEntry> entries, LookupLayout? layout = null)
    {
        ArgumentNullException.ThrowIfNull(entries);
        layout ??= new LookupLayout();
        var ordered = entries.ToArray();
        Array.Sort(ordered, EntryOrder.Instance);
        RefuseTwins(ordered);

        var sink = new ShardSink();
        var filters = new FilterTable(ordered);
        var tables = new List<TableShards>();
        tables.AddRange(new NumberTables(ordered).Write(layout, sink));
        tables.AddRange(new WordTables(ordered).Write(layout, sink));
        tables.Add(filters.Write(layout, sink));
        tables.Add(RecordWriter.Write(ordered, layout.ShardLimit, sink));

        var manifest = new Manifest(ordered.Length, sink.Bytes, tables, filters.Values());
        var first = new LookupFile(IndexFormat.FirstScript, ShardScript.Wrap("index", manifest.Write()));
        return new LookupFiles([first, .. sink.Files]);
    }

    private static void RefuseTwins(LookupEntry[] entries)
    {
        var twin = entries.GroupBy(entry => (entry.Type, entry.Id)).FirstOrDefault(group => group.Count() > 1);
        if (twin is not null)
        {
            throw new ArgumentException($"Two entries are {twin.Key.Type} {twin.Key.Id}.", nameof(entries));
        }
    }
}

namespace Crossref.Core.Lookup;

/// <summary>Loads shards, each once.</summary>
internal sealed class ShardStore(Func<string, string> load)
{
    private readonly Dictionary<string, Row[]> _rows = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string[]> _lines = new(StringComparer.Ordinal);

    /// <summary>The string that the first script hands over.</summary>
    public string FirstScript() => ShardScript.Unwrap(load(IndexFormat.FirstScript));

    /// <summary>The rows of a shard of keys.</summary>
    public Row[] Rows(string table, int shard) => Once(_rows, table, shard, Decode);

    /// <summary>The lines of a shard of records.</summary>
    public string[] Lines(string table, int shard) => Once(_lines, table, shard, body => body.Split('\n'));

    /// <summary>Undoes the front coding of a shard.</summary>
    public static Row[] Decode(string body)
    {
        var texts = body.Split(' ');
        var rows = new Row[texts.Length];
        var key = "";
        for (var i = 0; i < texts.Length; i++)
        {
            var text = texts[i];
            var comma = text.IndexOf(',', StringComparison.Ordinal);
            key = string.Concat(key.AsSpan(0, Radix.Digit(text[0])), text.AsSpan(1, comma - 1));
            rows[i] = new Row(key, text[(comma + 1)..]);
        }

        return rows;
    }

    private T[] Once<T>(Dictionary<string, T[]> loaded, string table, int shard, Func<string, T[]> decode)
    {
        var path = IndexFormat.ShardPath(table, shard);
        if (!loaded.TryGetValue(path, out var items))
        {
            items = decode(ShardScript.Unwrap(load(path)));
            loaded.Add(path, items);
        }

        return items;
    }
}

namespace Crossref.Core.Lookup;

/// <summary>Reads a table of keys, one shard at a time.</summary>
internal sealed class TableReader(TableShards shards, ShardStore store)
{
    /// <summary>Visits the rows whose keys start with a text, in order, until the visitor answers no.</summary>
    public void Walk(string start, Func<Row, bool> visit)
    {
        for (var shard = shards.StartFor(start); shard < shards.FirstKeys.Count; shard++)
        {
            var rows = store.Rows(shards.Table, shard);
            for (var i = LowerBound(rows, start); i < rows.Length; i++)
            {
                if (!rows[i].Key.StartsWith(start, StringComparison.Ordinal) || !visit(rows[i]))
                {
                    return;
                }
            }
        }
    }

    /// <summary>Visits the rows of one key, in order, until the visitor answers no.</summary>
    public void WalkKey(string key, Func<Row, bool> visit) =>
        Walk(key, row => row.Key.Length == key.Length && visit(row));

    private static int LowerBound(Row[] rows, string key)
    {
        var low = 0;
        var high = rows.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (string.CompareOrdinal(rows[middle].Key, key) < 0)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}

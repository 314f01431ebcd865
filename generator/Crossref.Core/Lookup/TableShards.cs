namespace Crossref.Core.Lookup;

/// <summary>The shards of a table, each by its first key.</summary>
internal sealed record TableShards(string Table, IReadOnlyList<string> FirstKeys)
{
    /// <summary>
    /// The shard from which a search for a key must start: the last that begins below it, because rows
    /// of one key may have been parted between shards.
    /// </summary>
    public int StartFor(string key)
    {
        var low = 0;
        var high = FirstKeys.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (string.CompareOrdinal(FirstKeys[middle], key) < 0)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return Math.Max(low - 1, 0);
    }
}

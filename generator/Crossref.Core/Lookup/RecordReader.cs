using System.Globalization;

namespace Crossref.Core.Lookup;

/// <summary>Reads the record of an entry.</summary>
internal sealed class RecordReader(TableShards shards, ShardStore store)
{
    private readonly int[] _firsts =
        [.. shards.FirstKeys.Select(key => int.Parse(key, CultureInfo.InvariantCulture))];

    public LookupEntry Read(int entry)
    {
        var found = Array.BinarySearch(_firsts, entry);
        var shard = found >= 0 ? found : ~found - 1;
        var lines = store.Lines(IndexFormat.Records, shard);
        return RecordCoder.Decode(lines[entry - _firsts[shard]]);
    }
}

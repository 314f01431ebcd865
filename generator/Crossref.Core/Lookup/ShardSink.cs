namespace Crossref.Core.Lookup;

/// <summary>Collects the shards of an index.</summary>
internal sealed class ShardSink
{
    private readonly List<LookupFile> _files = [];

    /// <summary>The size of all shards so far, in bytes.</summary>
    public long Bytes { get; private set; }

    public IReadOnlyList<LookupFile> Files => _files;

    public void Add(string table, int shard, string body)
    {
        var script = ShardScript.Wrap(IndexFormat.ShardName(table, shard), body);
        _files.Add(new LookupFile(IndexFormat.ShardPath(table, shard), script));
        Bytes += script.Length;
    }
}

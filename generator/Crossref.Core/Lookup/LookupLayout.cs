namespace Crossref.Core.Lookup;

/// <summary>How an index is cut into files. The defaults were measured; others serve tests.</summary>
public sealed record LookupLayout
{
    /// <summary>
    /// The largest shard in bytes. Larger shards cost more to read on a slow stick than they save in openings.
    /// One row longer than this still gets a shard of its own.
    /// </summary>
    public int ShardLimit { get; init; } = 64 * 1024;

    /// <summary>The longest list of entries kept beside its key, in bytes; for a word, its best entries.</summary>
    public int HeadLimit { get; init; } = 16 * 1024;
}

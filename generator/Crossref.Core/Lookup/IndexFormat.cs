using System.Globalization;

namespace Crossref.Core.Lookup;

/// <summary>
/// Names that the writer and both readers share.
/// <para>
/// Every shard hands over one string. A table of keys holds rows parted by spaces: one character for how much
/// of the key before it repeats, the rest of the key, a comma, the value. Keys rise; a list too long for one
/// row goes on in the next row under the same key. A shard of records holds one line for each entry.
/// The first script (<see cref="FirstScript"/>) holds the format, the number of entries, the size of all other
/// shards, the first key of every shard and the values of the filters.
/// </para>
/// </summary>
internal static class IndexFormat
{
    public const string Mark = "crossref-lookup";
    public const int Version = 1;
    public const string FirstScript = "lookup/index.js";

    /// <summary>Normal forms of numbers and ids, to entries.</summary>
    public const string Numbers = "numbers";

    /// <summary>Normal forms of numbers read backwards, to entries.</summary>
    public const string Reversed = "reversed";

    /// <summary>Ends of numbers, of three characters and more but not whole, to entries.</summary>
    public const string Inner = "inner";

    /// <summary>Words, to how many entries have them and the best of these.</summary>
    public const string Words = "words";

    /// <summary>Words, to the entries that <see cref="Words"/> had no room for.</summary>
    public const string More = "more";

    /// <summary>Filters, to the entries they leave.</summary>
    public const string Filters = "filters";

    /// <summary>What a result line shows, by entry.</summary>
    public const string Records = "records";

    /// <summary>The shortest piece of a number looked for inside numbers.</summary>
    public const int ShortestInner = 3;

    /// <summary>Longer numbers are found by their beginning only: their ends would swell the index.</summary>
    public const int LongestInner = 64;

    /// <summary>The name of a shard; 256 shards share a folder.</summary>
    public static string ShardName(string table, int shard) =>
        string.Create(CultureInfo.InvariantCulture, $"{table}/{shard / 256}/{shard % 256:x2}");

    /// <summary>The path of a shard from the root of the site.</summary>
    public static string ShardPath(string table, int shard) => $"lookup/{ShardName(table, shard)}.js";

    /// <summary>The key of a filter: <c>kind=bearing</c>.</summary>
    public static string FilterKey(string name, string value) => $"{name}={string.Join('-', TextFold.Words(value))}";
}

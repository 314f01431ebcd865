using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>Writes a table of rising keys into shards; see <see cref="IndexFormat"/>.</summary>
internal sealed class TableWriter(string table, int shardLimit, ShardSink sink)
{
    private readonly int _room = shardLimit - ShardScript.Overhead(IndexFormat.ShardName(table, 0)) - 8;
    private readonly List<string> _firstKeys = [];
    private readonly StringBuilder _body = new();
    private int _length;
    private string _lastKey = "";

    /// <summary>Adds a row.</summary>
    /// <param name="key">Not below the key before it (ordinal); without spaces and commas.</param>
    /// <param name="value">Characters of <see cref="Radix"/>.</param>
    public void Add(string key, string value)
    {
        if (string.CompareOrdinal(key, _lastKey) < 0)
        {
            throw new ArgumentException($"Keys must rise: {key} after {_lastKey}.", nameof(key));
        }

        var row = Row(_body.Length == 0 ? "" : _lastKey, key, value);
        var length = ShardScript.EscapedLength(row) + 1;
        if (_body.Length > 0 && _length + length > _room)
        {
            Flush();
            row = Row("", key, value);
            length = ShardScript.EscapedLength(row) + 1;
        }

        if (_body.Length == 0)
        {
            _firstKeys.Add(key);
        }
        else
        {
            _body.Append(' ');
        }

        _body.Append(row);
        _length += length;
        _lastKey = key;
    }

    /// <summary>Adds a key with its postings, in as many rows as they need.</summary>
    public void Add(string key, IReadOnlyList<Posting> postings, int rowLimit)
    {
        foreach (var (_, text) in PostingCoder.Chunks(postings, rowLimit))
        {
            Add(key, text);
        }
    }

    /// <summary>Hands the last shard to the sink and says which shards there are.</summary>
    public TableShards Finish()
    {
        if (_body.Length > 0)
        {
            Flush();
        }

        return new TableShards(table, _firstKeys);
    }

    private void Flush()
    {
        sink.Add(table, _firstKeys.Count - 1, _body.ToString());
        _body.Clear();
        _length = 0;
    }

    private static string Row(string before, string key, string value)
    {
        var shared = 0;
        var most = Math.Min(Math.Min(before.Length, key.Length), Radix.Alphabet.Length - 1);
        while (shared < most && before[shared] == key[shared])
        {
            shared++;
        }

        return $"{Radix.Alphabet[shared]}{key.AsSpan(shared)},{value}";
    }
}

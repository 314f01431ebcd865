using System.Globalization;
using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>Writes the records of all entries into shards; the first key of a shard is its first entry's number.</summary>
internal static class RecordWriter
{
    public static TableShards Write(IReadOnlyList<LookupEntry> entries, int shardLimit, ShardSink sink)
    {
        var room = shardLimit - ShardScript.Overhead(IndexFormat.ShardName(IndexFormat.Records, 0)) - 8;
        var firsts = new List<string>();
        var body = new StringBuilder();
        var length = 0;
        for (var i = 0; i < entries.Count; i++)
        {
            var line = RecordCoder.Encode(entries[i]);
            var lineLength = ShardScript.EscapedLength(line) + 2;
            if (body.Length > 0 && length + lineLength > room)
            {
                sink.Add(IndexFormat.Records, firsts.Count - 1, body.ToString());
                body.Clear();
                length = 0;
            }

            if (body.Length == 0)
            {
                firsts.Add(i.ToString(CultureInfo.InvariantCulture));
            }
            else
            {
                body.Append('\n');
            }

            body.Append(line);
            length += lineLength;
        }

        if (body.Length > 0)
        {
            sink.Add(IndexFormat.Records, firsts.Count - 1, body.ToString());
        }

        return new TableShards(IndexFormat.Records, firsts);
    }
}

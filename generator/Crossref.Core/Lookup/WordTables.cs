using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>Writes the words of all entries, the best entries of each word first and the overflow apart.</summary>
internal sealed class WordTables
{
    private const int Fields = 3;

    private readonly int _entries;
    private readonly Dictionary<string, List<Occurrence>> _byWord = new(StringComparer.Ordinal);
    private readonly long[] _lengths = new long[Fields];

    public WordTables(IReadOnlyList<LookupEntry> entries)
    {
        _entries = entries.Count;
        for (var i = 0; i < entries.Count; i++)
        {
            AddEntry(i, entries[i]);
        }
    }

    public IEnumerable<TableShards> Write(LookupLayout layout, ShardSink sink)
    {
        var words = new TableWriter(IndexFormat.Words, layout.ShardLimit, sink);
        var more = new TableWriter(IndexFormat.More, layout.ShardLimit, sink);
        foreach (var (word, occurrences) in _byWord.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            var postings = Impacts(occurrences);
            var count = new StringBuilder();
            Radix.Append(count, postings.Length);
            var chunks = PostingCoder.Chunks(postings, layout.HeadLimit).ToList();
            words.Add(word, count + chunks[0].Text);
            foreach (var (_, text) in chunks.Skip(1))
            {
                more.Add(word, text);
            }
        }

        yield return words.Finish();
        yield return more.Finish();
    }

    private void AddEntry(int index, LookupEntry entry)
    {
        var best = new Dictionary<string, Occurrence>(StringComparer.Ordinal);
        var fields = FieldTexts(entry);
        for (var field = 0; field < fields.Length; field++)
        {
            var words = fields[field].SelectMany(TextFold.Words).ToList();
            _lengths[field] += words.Count;
            foreach (var group in words.GroupBy(word => word, StringComparer.Ordinal))
            {
                best.TryAdd(group.Key, new Occurrence(index, field, group.Count(), words.Count));
            }
        }

        foreach (var (word, occurrence) in best)
        {
            if (!_byWord.TryGetValue(word, out var list))
            {
                _byWord.Add(word, list = []);
            }

            list.Add(occurrence);
        }
    }

    // Name, aliases, text. Of a number only pieces without digits are words ("OS"): its digits are the number's matter.
    private static IEnumerable<string>[] FieldTexts(LookupEntry entry)
    {
        var makers = entry.Numbers.Select(number => number.Maker ?? "");
        var letters = entry.Numbers
            .SelectMany(number => TextFold.Words(number.Text))
            .Where(word => !word.Any(char.IsAsciiDigit));
        return
        [
            [entry.Title],
            entry.Aliases,
            [entry.Detail, entry.Id, entry.Type, entry.Kind ?? "", .. entry.Families, .. makers, .. letters, entry.Text],
        ];
    }

    private Posting[] Impacts(List<Occurrence> occurrences)
    {
        var rarity = WordImpact.Rarity(_entries, occurrences.Count);
        var postings = occurrences.ConvertAll(at => new Posting(
            WordImpact.Of(WordImpact.Level(at.Field, at.Times, at.Length, AverageSixteenths(at.Field)), rarity),
            at.Entry)).ToArray();
        Array.Sort(postings, (x, y) => x.Level != y.Level ? y.Level.CompareTo(x.Level) : x.Entry.CompareTo(y.Entry));
        return postings;
    }

    private int AverageSixteenths(int field) => (int)Math.Max(16, _lengths[field] * 16 / _entries);

    private readonly record struct Occurrence(int Entry, int Field, int Times, int Length);
}

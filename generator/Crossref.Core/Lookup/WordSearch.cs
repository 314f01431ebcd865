namespace Crossref.Core.Lookup;

/// <summary>Finds entries by a word or the beginning of one.</summary>
internal sealed class WordSearch(TableReader words, TableReader more)
{
    // One letter begins too many words to mean any of them.
    private const int ShortestBeginning = 2;

    /// <summary>The entries with a word, each with the best impact.</summary>
    /// <param name="word">A folded word.</param>
    /// <param name="begun">Whether longer words that start so count, too.</param>
    /// <param name="deep">Whether to read on where a word's best entries are not all it has.</param>
    /// <param name="allowed">The entries to choose from; all when null.</param>
    /// <param name="isCut">Whether entries were left unread.</param>
    public Dictionary<int, WordMatch> Find(string word, bool begun, bool deep, bool[]? allowed, out bool isCut)
    {
        var found = new Dictionary<int, WordMatch>();
        var cut = false;
        var left = SearchBudget.Beginnings;
        if (begun && word.Length >= ShortestBeginning)
        {
            words.Walk(word, Visit);
        }
        else
        {
            words.WalkKey(word, Visit);
        }

        isCut = cut;
        return found;

        bool Visit(Row row)
        {
            var at = 0;
            var total = Radix.Read(row.Value, ref at);
            var read = Keep(row.Key, row.Value, at);
            if (read < total && deep)
            {
                more.WalkKey(row.Key, rest => (read += Keep(rest.Key, rest.Value, 0)) < SearchBudget.Walk);
            }

            cut |= read < total;
            return --left > 0;
        }

        int Keep(string key, string postings, int at)
        {
            var read = 0;
            foreach (var posting in PostingCoder.Decode(postings, at))
            {
                read++;
                if (allowed is not null && !allowed[posting.Entry])
                {
                    continue;
                }

                var impact = key.Length == word.Length
                    ? posting.Level
                    : WordImpact.Begun(posting.Level, word.Length, key.Length);
                if (!found.TryGetValue(posting.Entry, out var before) || impact > before.Impact)
                {
                    found[posting.Entry] = new WordMatch(impact, key);
                }
            }

            return read;
        }
    }
}

namespace Crossref.Core.Lookup;

/// <summary>
/// Finds the entries that answer as many terms of a query as any entry does, each term by a number or by words.
/// When an entry answers all of them, its best number gives the tier.
/// </summary>
internal sealed class TermSearch(NumberSearch numbers, WordSearch words, int entries)
{
    /// <summary>The matches, in no order; the overflow of common words is read only when too few come without.</summary>
    /// <param name="terms">At least one.</param>
    /// <param name="allowed">The entries to choose from; all when null.</param>
    /// <param name="enough">How many matches are enough.</param>
    public IReadOnlyList<Match> Find(IReadOnlyList<QueryTerm> terms, bool[]? allowed, int enough)
    {
        var found = new Dictionary<int, TermMatch>[terms.Count];
        var isCut = false;
        for (var i = 0; i < terms.Count; i++)
        {
            found[i] = FindTerm(terms, i, allowed, deep: false, ref isCut);
        }

        var matches = Combine(found, out var isAll);
        if (!isCut || (isAll && matches.Count >= enough))
        {
            return matches;
        }

        // Some entry answers every term, so only such entries count, and each term leaves fewer for the next:
        // the rarest goes first.
        var order = Enumerable.Range(0, terms.Count).OrderBy(i => found[i].Count).ToList();
        foreach (var i in order)
        {
            found[i] = FindTerm(terms, i, allowed, deep: true, ref isCut);
            if (isAll)
            {
                allowed = Marks(found[i].Keys);
            }
        }

        return Combine(found, out _);
    }

    private bool[] Marks(IEnumerable<int> which)
    {
        var marks = new bool[entries];
        foreach (var entry in which)
        {
            marks[entry] = true;
        }

        return marks;
    }

    private static List<Match> Combine(Dictionary<int, TermMatch>[] found, out bool isAll)
    {
        var byEntry = new Dictionary<int, List<TermMatch>>();
        foreach (var (entry, match) in found.SelectMany(term => term))
        {
            if (!byEntry.TryGetValue(entry, out var list))
            {
                byEntry.Add(entry, list = []);
            }

            list.Add(match);
        }

        var most = byEntry.Values.Select(list => list.Count).DefaultIfEmpty().Max();
        var all = isAll = most == found.Length;
        return [.. byEntry.Where(pair => pair.Value.Count == most).Select(pair => Combine(pair.Key, pair.Value, all))];
    }

    private Dictionary<int, TermMatch> FindTerm(
        IReadOnlyList<QueryTerm> terms, int index, bool[]? allowed, bool deep, ref bool isCut)
    {
        var term = terms[index];
        var found = FindWords(term, allowed, deep, ref isCut);
        // A single term has been looked up among the numbers already, as the whole query.
        if (terms.Count == 1 || term.Form.Length < 2)
        {
            return found;
        }

        foreach (var (entry, match) in numbers.Find(term.Form, term.Typed, allowed, int.MaxValue))
        {
            found[entry] = new TermMatch(match, 0, []);
        }

        if (found.Count == 0)
        {
            foreach (var (entry, match) in numbers.FindSlips(term.Form, term.Typed, allowed))
            {
                found[entry] = new TermMatch(match, 0, []);
            }
        }

        return found;
    }

    // An entry must have every word of the term.
    private Dictionary<int, TermMatch> FindWords(QueryTerm term, bool[]? allowed, bool deep, ref bool isCut)
    {
        var found = new Dictionary<int, TermMatch>();
        for (var i = 0; i < term.Words.Count; i++)
        {
            var begun = term.Begun && i == term.Words.Count - 1;
            var having = words.Find(term.Words[i], begun, deep, allowed, out var cut);
            isCut |= cut;
            var before = found;
            found = [];
            foreach (var (entry, match) in having)
            {
                if (i == 0)
                {
                    found.Add(entry, new TermMatch(null, match.Impact, [match.Word]));
                }
                else if (before.TryGetValue(entry, out var so))
                {
                    found.Add(entry, new TermMatch(null, so.Sum + match.Impact, [.. so.Words, match.Word]));
                }
            }
        }

        return found;
    }

    private static Match Combine(int entry, List<TermMatch> terms, bool isAll)
    {
        NumberMatch? lead = null;
        foreach (var term in terms)
        {
            if (isAll && term.Number is not null && (lead is null || term.Number.CompareTo(lead) < 0))
            {
                lead = term.Number;
            }
        }

        var sum = Math.Min(terms.Sum(term => term.Sum), LookupTier.Step - 1);
        return new Match(
            entry,
            ((lead?.Tier ?? LookupTier.Words) * LookupTier.Step) + sum,
            lead,
            [.. terms.Select(term => term.Number).OfType<NumberMatch>()],
            [.. terms.SelectMany(term => term.Words).Distinct()]);
    }
}

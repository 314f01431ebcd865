namespace Crossref.Core.Lookup;

/// <summary>
/// Finds the entries that answer as many terms of a query as any entry does, each term by a number or by words.
/// When an entry answers all of them, its best number gives the tier.
/// </summary>
internal sealed class TermSearch(NumberSearch numbers, WordSearch words)
{
    /// <summary>The matches, in no order; the overflow of common words is read only when too few come without.</summary>
    /// <param name="terms">At least one.</param>
    /// <param name="allowed">The entries to choose from; all when null.</param>
    /// <param name="enough">How many matches are enough.</param>
    public IReadOnlyList<Match> Find(IReadOnlyList<QueryTerm> terms, bool[]? allowed, int enough)
    {
        var matches = Find(terms, allowed, deep: false, out var isAll, out var isCut);
        return isCut && (!isAll || matches.Count < enough)
            ? Find(terms, allowed, deep: true, out _, out _)
            : matches;
    }

    private List<Match> Find(
        IReadOnlyList<QueryTerm> terms, bool[]? allowed, bool deep, out bool isAll, out bool isCut)
    {
        var byEntry = new Dictionary<int, List<TermMatch>>();
        isCut = false;
        foreach (var term in terms)
        {
            // A single term has been looked up among the numbers already, as the whole query.
            foreach (var (entry, match) in FindTerm(term, terms.Count > 1, allowed, deep, ref isCut))
            {
                if (!byEntry.TryGetValue(entry, out var list))
                {
                    byEntry.Add(entry, list = []);
                }

                list.Add(match);
            }
        }

        var most = byEntry.Values.Select(list => list.Count).DefaultIfEmpty().Max();
        var all = isAll = most == terms.Count;
        return [.. byEntry.Where(pair => pair.Value.Count == most).Select(pair => Combine(pair.Key, pair.Value, all))];
    }

    private Dictionary<int, TermMatch> FindTerm(
        QueryTerm term, bool byNumber, bool[]? allowed, bool deep, ref bool isCut)
    {
        var found = FindWords(term, allowed, deep, ref isCut);
        if (!byNumber || term.Form.Length < 2)
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

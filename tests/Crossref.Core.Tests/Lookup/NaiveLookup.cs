using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup;

/// <summary>
/// The ranking told again without an index: every entry is judged against the query by itself. Slow and plain;
/// distances come from the usual matrix, impacts from the formula in floating point where that is exact enough.
/// </summary>
internal sealed class NaiveLookup
{
    private readonly LookupEntry[] _entries;
    private readonly Dictionary<string, int>[] _impacts;
    private readonly string[] _vocabulary;

    public NaiveLookup(IEnumerable<LookupEntry> entries)
    {
        _entries = [.. entries.Order(EntryOrder.Instance)];
        var fields = _entries.Select(Fields).ToArray();
        var averages = Enumerable.Range(0, 3)
            .Select(f => (int)Math.Max(16, fields.Sum(entry => (long)entry[f].Length) * 16 / _entries.Length)).ToArray();
        var having = fields.SelectMany(entry => entry.SelectMany(words => words).Distinct())
            .GroupBy(word => word).ToDictionary(group => group.Key, group => group.Count());
        _vocabulary = [.. having.Keys.Order(StringComparer.Ordinal)];
        _impacts = [.. fields.Select(entry => entry.SelectMany(words => words).Distinct().ToDictionary(
            word => word,
            word =>
            {
                var f = Array.FindIndex(entry, words => words.Contains(word));
                var level = WordImpact.Level(f, entry[f].Count(w => w == word), entry[f].Length, averages[f]);
                return WordImpact.Of(level, WordImpact.Rarity(_entries.Length, having[word]));
            }))];
    }

    private sealed record Found(int Entry, int Score, string Key, int Role);

    public IReadOnlyList<(string Id, int Score)> Find(LookupQuery query)
    {
        var text = QueryTerm.Tidy(query.Text);
        var allowed = Enumerable.Range(0, _entries.Length).Where(i => Passes(_entries[i], query)).ToList();
        var whole = allowed.Select(i => Whole(i, NumberForm.Of(text))).OfType<Found>();
        var sure = whole.Where(found => LookupTier.Of(found.Score) > LookupTier.Typo).ToList();
        var all = sure.Count < query.Limit ? whole : sure;
        return [.. all.Concat(ByTerms(allowed, QueryTerm.Of(text)))
            .GroupBy(found => found.Entry).Select(group => Sort(group).First())
            .Pipe(Sort).Take(query.Limit)
            .Select(found => (_entries[found.Entry].Id, found.Score))];
    }

    private static IEnumerable<Found> Sort(IEnumerable<Found> found) => found
        .OrderByDescending(f => f.Score).ThenBy(f => f.Key, StringComparer.Ordinal).ThenBy(f => f.Role).ThenBy(f => f.Entry);

    private Found? Whole(int entry, string form)
    {
        var best = Number(entry, form, slips: true);
        return best is null ? null : best with { Score = best.Score * LookupTier.Step };
    }

    // The best number of an entry for a form; its score is the tier.
    private Found? Number(int entry, string form, bool slips)
    {
        var numbers = _entries[entry].Numbers.Append(new LookupNumber(_entries[entry].Id, NumberRole.Id));
        return form.Length == 0 ? null : numbers
            .SelectMany(number => Ways(NumberForm.Of(number.Text), number.Role, form, slips)
                .Select(way => new Found(entry, way.Tier, way.Key, (int)number.Role)))
            .Pipe(Sort).FirstOrDefault();
    }

    private static IEnumerable<(int Tier, string Key)> Ways(string number, NumberRole role, string form, bool slips)
    {
        if (number == form)
        {
            yield return (LookupTier.ExactFor(role), number);
        }

        if (role == NumberRole.Id)
        {
            yield break;
        }

        for (var at = 0; at + form.Length <= number.Length; at++)
        {
            if (string.CompareOrdinal(number, at, form, 0, form.Length) == 0 && (at == 0 ? number != form : form.Length >= 3))
            {
                yield return (at == 0 ? LookupTier.Prefix : LookupTier.Middle, number[at..]);
            }
        }

        if (slips && form.Length >= 4 && Distance(form, number) == 1)
        {
            yield return (LookupTier.Typo, number);
        }
    }

    private IEnumerable<Found> ByTerms(List<int> allowed, IReadOnlyList<QueryTerm> terms)
    {
        var byTerm = terms.Select(term => ByTerm(allowed, term, terms.Count > 1)).ToList();
        var most = allowed.Select(i => byTerm.Count(found => found.ContainsKey(i))).DefaultIfEmpty().Max();
        if (most == 0)
        {
            yield break;
        }

        foreach (var i in allowed.Where(i => byTerm.Count(found => found.ContainsKey(i)) == most))
        {
            var parts = byTerm.Where(found => found.ContainsKey(i)).Select(found => found[i]).ToList();
            var lead = parts.Where(part => part.Number is not null).Select(part => part.Number!).Pipe(Sort).FirstOrDefault();
            lead = most == terms.Count ? lead : null;
            yield return new Found(
                i, ((lead?.Score ?? 1) * LookupTier.Step) + parts.Sum(part => part.Sum), lead?.Key ?? "", lead?.Role ?? 0);
        }
    }

    private Dictionary<int, (Found? Number, int Sum)> ByTerm(List<int> allowed, QueryTerm term, bool byNumber)
    {
        var found = new Dictionary<int, (Found? Number, int Sum)>();
        foreach (var i in allowed)
        {
            var impacts = term.Words.Select((word, w) => Impact(i, word, term.Begun && w == term.Words.Count - 1)).ToList();
            var number = byNumber && term.Form.Length >= 2 ? Number(i, term.Form, slips: false) : null;
            if (number is not null || impacts.All(impact => impact > 0))
            {
                found.Add(i, (number, number is null ? impacts.Sum() : 0));
            }
        }

        if (found.Count == 0 && byNumber && term.Form.Length >= 2)
        {
            foreach (var i in allowed)
            {
                if (Number(i, term.Form, slips: true) is { } number)
                {
                    found.Add(i, (number, 0));
                }
            }
        }

        return found;
    }

    private int Impact(int entry, string word, bool begun)
    {
        var standsFor = begun && word.Length >= 2
            ? _vocabulary.Where(known => known.StartsWith(word, StringComparison.Ordinal)).Take(40)
            : [word];
        return standsFor.Where(_impacts[entry].ContainsKey)
            .Select(known => known == word ? _impacts[entry][known] : Math.Max(1, _impacts[entry][known] * word.Length / known.Length))
            .DefaultIfEmpty().Max();
    }

    private static string[][] Fields(LookupEntry entry)
    {
        var letters = entry.Numbers.SelectMany(n => TextFold.Words(n.Text)).Where(word => !word.Any(char.IsAsciiDigit));
        string[] text = [entry.Detail, entry.Id, entry.Type, entry.Kind ?? "", entry.Text, .. entry.Families,
            .. entry.Numbers.Select(n => n.Maker ?? ""), .. letters];
        return [[.. TextFold.Words(entry.Title)], [.. entry.Aliases.SelectMany(TextFold.Words)], [.. text.SelectMany(TextFold.Words)]];
    }

    private static bool Passes(LookupEntry entry, LookupQuery query) =>
        (query.Type is null || entry.Type == query.Type)
        && (query.Kind is null || entry.Kind == query.Kind)
        && (query.Standing is null || entry.Standing == query.Standing)
        && (query.Family is null || entry.Families.Contains(query.Family));

    // Optimal string alignment: insertion, deletion, substitution, swap of neighbours.
    public static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                d[i, j] = i == 0 || j == 0
                    ? i + j
                    : Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}

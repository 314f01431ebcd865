namespace Crossref.Core.Lookup;

/// <summary>
/// Answers queries from the files of an index, reading only the shards a query needs. The script of the site
/// answers alike: the same hits in the same order with the same reasons and scores. Not for several threads at once.
/// </summary>
public sealed class LookupReader
{
    private readonly Manifest _manifest;
    private readonly NumberSearch _numbers;
    private readonly TermSearch _terms;
    private readonly FilterReader _filters;
    private readonly RecordReader _records;

    /// <summary>Opens an index.</summary>
    /// <param name="load">Gives the text of a file by its path from the root of the site.</param>
    /// <exception cref="LookupFormatException">Not an index, or one of an unknown format.</exception>
    public LookupReader(Func<string, string> load)
    {
        ArgumentNullException.ThrowIfNull(load);
        var store = new ShardStore(load);
        _manifest = Manifest.Read(store.FirstScript());
        _numbers = new NumberSearch(
            Table(IndexFormat.Numbers), Table(IndexFormat.Reversed), Table(IndexFormat.Inner));
        var words = new WordSearch(Table(IndexFormat.Words), Table(IndexFormat.More));
        _terms = new TermSearch(_numbers, words, _manifest.Entries);
        _filters = new FilterReader(Table(IndexFormat.Filters), _manifest.Entries);
        _records = new RecordReader(_manifest.Table(IndexFormat.Records), store);

        TableReader Table(string name) => new(_manifest.Table(name), store);
    }

    /// <summary>How many entries the index holds.</summary>
    public int Entries => _manifest.Entries;

    /// <summary>The values of the filters, for offering them; of each filter at most the 500 most used.</summary>
    public IReadOnlyList<FilterValue> FilterValues => _manifest.Filters;

    /// <summary>The best hits for a query, best first.</summary>
    public IReadOnlyList<LookupHit> Find(LookupQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        ArgumentOutOfRangeException.ThrowIfLessThan(query.Limit, 1);
        var text = QueryTerm.Tidy(query.Text);
        var allowed = _filters.Allowed(query);
        return text.Length == 0
            ? [.. Browse(query, allowed)]
            : [.. Matches(text, allowed, query.Limit).Select(match => Hit(match.Entry, match.Score, record => Reason.For(match, record)))];
    }

    private IEnumerable<LookupHit> Browse(LookupQuery query, bool[]? allowed)
    {
        var why = Reason.For(FilterReader.Filters(query));
        return Enumerable.Range(0, allowed?.Length ?? 0)
            .Where(entry => allowed![entry])
            .Take(query.Limit)
            .Select(entry => Hit(entry, 0, _ => why));
    }

    private List<Match> Matches(string text, bool[]? allowed, int limit)
    {
        var best = new Dictionary<int, Match>();
        var form = NumberForm.Of(text);
        if (form.Length == 0)
        {
            return [];
        }

        foreach (var (entry, number) in WholeNumber(form, text, allowed, limit))
        {
            best.Add(entry, new Match(entry, number.Tier * LookupTier.Step, number, [number], []));
        }

        var terms = QueryTerm.Of(text);
        if (terms.Count > 1 || best.Count < limit)
        {
            foreach (var match in _terms.Find(terms, allowed, limit))
            {
                if (!best.TryGetValue(match.Entry, out var before) || match.CompareTo(before) < 0)
                {
                    best[match.Entry] = match;
                }
            }
        }

        return [.. best.Values.Order().Take(limit)];
    }

    // The query as one number, with its spaces taken for separators.
    private Dictionary<int, NumberMatch> WholeNumber(string form, string text, bool[]? allowed, int limit)
    {
        var found = _numbers.Find(form, text, allowed, limit);
        if (found.Count < limit)
        {
            foreach (var (entry, match) in _numbers.FindSlips(form, text, allowed))
            {
                found.TryAdd(entry, match);
            }
        }

        return found;
    }

    private LookupHit Hit(int entry, int score, Func<LookupEntry, string> why)
    {
        var record = _records.Read(entry);
        return new LookupHit(
            record.Type,
            record.Id,
            record.Title,
            why(record),
            score,
            record.Page,
            record.Detail,
            record.Kind,
            record.Families,
            record.Standing);
    }
}

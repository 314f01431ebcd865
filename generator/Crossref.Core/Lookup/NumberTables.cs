namespace Crossref.Core.Lookup;

/// <summary>Writes the three tables of numbers: forwards, backwards, and the ends of numbers.</summary>
internal sealed class NumberTables
{
    private readonly Dictionary<string, List<Posting>> _byForm = new(StringComparer.Ordinal);

    public NumberTables(IReadOnlyList<LookupEntry> entries)
    {
        for (var i = 0; i < entries.Count; i++)
        {
            foreach (var number in entries[i].Numbers)
            {
                Add(number.Text, new Posting((int)number.Role, i));
            }

            Add(entries[i].Id, new Posting((int)NumberRole.Id, i));
        }
    }

    public IEnumerable<TableShards> Write(LookupLayout layout, ShardSink sink)
    {
        var forms = _byForm.Keys.Order(StringComparer.Ordinal).ToArray();
        var postings = Array.ConvertAll(forms, form => Tidy(_byForm[form]));
        var numbers = new TableWriter(IndexFormat.Numbers, layout.ShardLimit, sink);
        for (var i = 0; i < forms.Length; i++)
        {
            numbers.Add(forms[i], postings[i], layout.HeadLimit);
        }

        yield return numbers.Finish();

        // Ids answer only when typed whole, so neither their ends nor their beginnings backwards are kept.
        var inside = Enumerable.Range(0, forms.Length)
            .Where(i => forms[i].Length <= IndexFormat.LongestInner)
            .Select(i => (Form: forms[i], Postings: Array.FindAll(postings[i], p => p.Level != (int)NumberRole.Id)))
            .Where(number => number.Postings.Length > 0)
            .ToArray();
        yield return WriteReversed(inside, layout, sink);
        yield return WriteInner(inside, layout, sink);
    }

    private static TableShards WriteReversed(
        (string Form, Posting[] Postings)[] inside, LookupLayout layout, ShardSink sink)
    {
        var backwards = inside.Select(number => (Form: Reverse(number.Form), number.Postings)).ToArray();
        Array.Sort(backwards, (x, y) => string.CompareOrdinal(x.Form, y.Form));
        var table = new TableWriter(IndexFormat.Reversed, layout.ShardLimit, sink);
        foreach (var (form, postings) in backwards)
        {
            table.Add(form, postings, layout.HeadLimit);
        }

        return table.Finish();
    }

    private static TableShards WriteInner(
        (string Form, Posting[] Postings)[] inside, LookupLayout layout, ShardSink sink)
    {
        // An end is a number and a place in it; as strings of their own, millions of ends would not fit in memory.
        var ends = new List<(int Number, int Start)>();
        for (var i = 0; i < inside.Length; i++)
        {
            for (var start = 1; start + IndexFormat.ShortestInner <= inside[i].Form.Length; start++)
            {
                ends.Add((i, start));
            }
        }

        ReadOnlySpan<char> Text((int Number, int Start) end) => inside[end.Number].Form.AsSpan(end.Start);
        ends.Sort((x, y) =>
        {
            var order = Text(x).SequenceCompareTo(Text(y));
            return order != 0 ? order : x.CompareTo(y);
        });

        var table = new TableWriter(IndexFormat.Inner, layout.ShardLimit, sink);
        for (var i = 0; i < ends.Count;)
        {
            var first = i;
            var postings = new List<Posting>();
            for (; i < ends.Count && Text(ends[i]).SequenceEqual(Text(ends[first])); i++)
            {
                postings.AddRange(inside[ends[i].Number].Postings);
            }

            table.Add(Text(ends[first]).ToString(), i - first == 1 ? postings : Tidy(postings), layout.HeadLimit);
        }

        return table.Finish();
    }

    /// <summary>The text read backwards, by characters of UTF-16.</summary>
    public static string Reverse(string text) =>
        string.Create(text.Length, text, (span, from) =>
        {
            from.AsSpan().CopyTo(span);
            span.Reverse();
        });

    private void Add(string text, Posting posting)
    {
        var form = NumberForm.Of(text);
        if (form.Length == 0)
        {
            return;
        }

        if (!_byForm.TryGetValue(form, out var list))
        {
            _byForm.Add(form, list = []);
        }

        list.Add(posting);
    }

    // One posting for each entry, the best of its roles.
    private static Posting[] Tidy(List<Posting> postings)
    {
        if (postings.Count == 1)
        {
            return [.. postings];
        }

        return
        [
            .. postings
                .GroupBy(posting => posting.Entry)
                .Select(group => group.MinBy(posting => posting.Level))
                .OrderBy(posting => posting.Level)
                .ThenBy(posting => posting.Entry),
        ];
    }
}

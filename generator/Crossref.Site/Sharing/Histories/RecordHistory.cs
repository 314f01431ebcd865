using Crossref.Core.Records;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing.Histories;

/// <summary>
/// What became of a record, key by key. Every state that was noted has a name, the hash of its text and of the states
/// known before it. Of each key it is known which state wrote what stands there, so that of two copies a text gives way
/// where the other copy knows the state that wrote it and says something else by now. Joining histories asks for no
/// order: any copies in any order come to the same.
/// </summary>
internal sealed class RecordHistory
{
    private readonly Lazy<ShownText> _shown;
    private readonly Lazy<ILookup<string, string>> _below;
    private readonly Lazy<(IReadOnlyDictionary<string, IReadOnlyList<Mark>> Marks, IReadOnlyDictionary<string, Spot> Spots)> _table;

    internal RecordHistory(RecordType type, IReadOnlySet<string> known, IReadOnlyDictionary<string, IReadOnlyList<Mark>> marks, IReadOnlyDictionary<string, Spot> spots)
        : this(type, known, () => (marks, spots)) { }

    private RecordHistory(RecordType type, IReadOnlySet<string> known, Func<(IReadOnlyDictionary<string, IReadOnlyList<Mark>>, IReadOnlyDictionary<string, Spot>)> table)
    {
        (Type, Known, _table) = (type, known, new(table));
        _shown = new(() => new ShownText(this));
        _below = new(() => Spots.Keys.ToLookup(Keys.Parent, StringComparer.Ordinal));
    }

    internal RecordType Type { get; }

    /// <summary>Every state that went into this one.</summary>
    internal IReadOnlySet<string> Known { get; }

    /// <summary>The one state there ever was; null when there were more. Most records are never changed, and never taken apart.</summary>
    internal Mark? Only { get; private init; }

    /// <summary>What stands at each key. More than one where copies that did not know each other differ.</summary>
    internal IReadOnlyDictionary<string, IReadOnlyList<Mark>> Marks => _table.Value.Marks;

    /// <summary>Where each key stands.</summary>
    internal IReadOnlyDictionary<string, Spot> Spots => _table.Value.Spots;

    /// <summary>The keys below each key, in no order.</summary>
    internal ILookup<string, string> Below => _below.Value;

    /// <summary>The text that follows from all that, and what is left to be chosen.</summary>
    internal ShownText Shown => _shown.Value;

    /// <summary>The record's text.</summary>
    internal string Text => Only?.Text ?? Shown.Text;

    /// <summary>The keys at which somebody has to choose.</summary>
    internal IReadOnlyList<OpenKey> Conflicts => Only is null ? Shown.Conflicts : [];

    /// <summary>The history of a record that nobody has seen before.</summary>
    internal static RecordHistory Begin(RecordType type, string text, string library, string date)
    {
        var only = new Mark(RecordText.Hash(text, []), text, library, date);
        return new RecordHistory(type, new SortedSet<string>(StringComparer.Ordinal) { only.State }, () =>
        {
            var flat = new FlatText(RecordText.OutlineOf(type, text));
            var spots = new Dictionary<string, Spot>(StringComparer.Ordinal);
            foreach (var keys in flat.Order.Values) Chain(spots, keys, 0);
            return (flat.Values.ToDictionary(v => v.Key, IReadOnlyList<Mark> (v) => [only with { Text = v.Value }], StringComparer.Ordinal), spots);
        }) { Only = only };
    }

    /// <summary>This history with the text as it stands now.</summary>
    /// <param name="text">The record's text.</param>
    /// <param name="library">In whose folder it stands.</param>
    /// <param name="date">Today.</param>
    /// <param name="settles">Whether the text as it stands settles everything that was left to be chosen.</param>
    internal RecordHistory Note(string text, string library, string date, bool settles) =>
        Note(text, library, date, settles ? Conflicts.Select(c => c.Key).ToHashSet(StringComparer.Ordinal) : []);

    /// <summary>This history after somebody chose what stands at a key; whatever else is open stays so.</summary>
    /// <param name="open">The key, one of <see cref="Conflicts"/>.</param>
    /// <param name="number">Which of its choices, from 0.</param>
    /// <param name="library">In whose folder that was done.</param>
    /// <param name="date">Today.</param>
    internal RecordHistory Choose(OpenKey open, int number, string library, string date)
    {
        var marks = Marks.ToDictionary(m => m.Key, m => m.Value, StringComparer.Ordinal);
        var text = open.Choices[number].Text;
        // Of one name in two forms the other form goes; of one form the text is what was chosen.
        var gone = open.GoneBy(number) ?? (text is null ? open.Key : null);
        if (gone is not null) marks[gone] = [new Mark("", marks[gone][0].Text, library, date) { IsOut = true, Below = StatesUnder(gone) }];
        else marks[open.Key] = [new Mark("", text!, library, date)];
        return Note(new RecordHistory(Type, Known, marks, Spots).Text, library, date, [open.Key]);
    }

    private RecordHistory Note(string text, string library, string date, HashSet<string> settled)
    {
        if (settled.Count == 0 && RecordText.Plain(text) == RecordText.Plain(Text)) return this;
        var state = RecordText.Hash(text, Known);
        var now = new FlatText(RecordText.OutlineOf(Type, text));
        var marks = Marks.ToDictionary(m => m.Key, m => m.Value, StringComparer.Ordinal);
        foreach (var (key, said) in now.Values)
        {
            if (!Shown.Values.TryGetValue(key, out var before) || before != said || settled.Contains(key)) marks[key] = [new Mark(state, said, library, date)];
        }
        foreach (var (key, before) in Marks.Where(m => !now.Values.ContainsKey(m.Key) && IsTakenOut(m.Key, now, settled)))
        {
            marks[key] = [new Mark(state, Shown.Values.GetValueOrDefault(key) ?? before[0].Text, library, date) { IsOut = true, Below = Keys.IsOwn(key) ? StatesUnder(key) : [] }];
        }
        var known = new SortedSet<string>(Known, StringComparer.Ordinal) { state, RecordText.Hash(text, []) };
        return new RecordHistory(Type, known, marks, Moved(now, marks));
    }

    /// <summary>One history in which this text and another stand as a whole, to be chosen from: for what cannot be merged by its keys.</summary>
    /// <param name="other">The other's history.</param>
    /// <param name="isOffered">Whether this text stays in force, whatever the other says.</param>
    internal RecordHistory Beside(RecordHistory other, bool isOffered)
    {
        var (mine, others) = (Wholes(), other.Wholes());
        var wholes = mine.Where(m => !other.Known.Contains(m.State) || others.Any(o => o.State == m.State))
            .Concat(others.Where(o => !Known.Contains(o.State) || mine.Any(m => m.State == o.State)).Select(m => m with { IsOffered = m.IsOffered || isOffered }))
            .DistinctBy(m => m.State).OrderBy(m => m.State, StringComparer.Ordinal).ToList();
        var known = new SortedSet<string>(Known.Union(other.Known).Concat(wholes.Select(m => m.State)), StringComparer.Ordinal);
        return new RecordHistory(Type, known,
            new Dictionary<string, IReadOnlyList<Mark>> { [Keys.Whole] = wholes }, new Dictionary<string, Spot> { [Keys.Whole] = new(0, "") });
    }

    /// <summary>
    /// Whether whole texts stand or stood here to be chosen from, and the other was changed by somebody who did not know of
    /// them: nobody can say to which of them that change belongs.
    /// </summary>
    internal bool IsApartFrom(RecordHistory other) =>
        Only is null && Marks.TryGetValue(Keys.Whole, out var wholes) && !other.Marks.ContainsKey(Keys.Whole)
        && !other.Known.IsSubsetOf(Known) && !wholes.All(m => other.Known.Contains(m.State));

    private bool IsOpenAsWhole => Conflicts.Any(c => c.Key == Keys.Whole);

    // What stands as a whole already stands on, and what is open at single keys is written out, so that no text is lost.
    private IReadOnlyList<Mark> Wholes()
    {
        if (IsOpenAsWhole) return Marks[Keys.Whole];
        var latest = Marks.Values.SelectMany(m => m).OrderBy(m => m.Date, StringComparer.Ordinal).ThenBy(m => m.State, StringComparer.Ordinal).Last();
        var others = Conflicts.SelectMany(open => Enumerable.Range(1, open.Choices.Count - 1).Select(number => Choose(open, number, latest.Library, latest.Date).Text));
        return [.. others.Prepend(Text).Distinct(StringComparer.Ordinal).Select(text => new Mark(RecordText.Hash(text, ["whole"]), text, latest.Library, latest.Date))];
    }

    /// <summary>Everything that belongs to a key: its comments, and what is below it.</summary>
    internal IEnumerable<string> Under(string key) =>
        Below[key].SelectMany(k => Under(k).Prepend(k)).Prepend(Keys.Indent(key)).Prepend(Keys.Comment(key));

    private string[] StatesUnder(string key) =>
        [.. Under(key).SelectMany(k => Marks.GetValueOrDefault(k) ?? []).Select(m => m.State).Distinct().Order(StringComparer.Ordinal)];

    // What was seen and is no longer there; and what lay hidden below something that was taken out and is back without it.
    private bool IsTakenOut(string key, FlatText now, HashSet<string> settled)
    {
        var above = Keys.IsOwn(key) ? Keys.Above(key) : Keys.Owner(key) is { Length: > 0 } owner ? Keys.Above(owner).Prepend(owner) : [];
        if (!above.All(now.Values.ContainsKey)) return false;
        return Shown.Values.ContainsKey(key) || settled.Contains(key) || above.Any(a => !Shown.Values.ContainsKey(a)) && Marks[key].Any(m => !m.IsOut);
    }

    private Dictionary<string, Spot> Moved(FlatText now, Dictionary<string, IReadOnlyList<Mark>> marks)
    {
        var spots = Spots.ToDictionary(s => s.Key, s => s.Value, StringComparer.Ordinal);
        foreach (var keys in now.Order.Values)
        {
            for (var i = 0; i < keys.Count; i++)
            {
                if (!spots.ContainsKey(keys[i])) spots[keys[i]] = new Spot(Known.Count, i == 0 ? "" : keys[i - 1]);
            }
        }
        var after = new RecordHistory(Type, Known, marks, spots);
        foreach (var (parent, keys) in now.Order)
        {
            if (!KeyOrder.Of(after, parent).Where(now.Values.ContainsKey).SequenceEqual(keys)) Chain(spots, keys, Known.Count);
        }
        return spots;
    }

    private static void Chain(Dictionary<string, Spot> spots, IReadOnlyList<string> keys, int age)
    {
        for (var i = 0; i < keys.Count; i++) spots[keys[i]] = new Spot(age, i == 0 ? "" : keys[i - 1]);
    }
}

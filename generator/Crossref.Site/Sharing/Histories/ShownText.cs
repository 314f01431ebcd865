using System.Globalization;
using System.Text.RegularExpressions;
using Crossref.Core.Records;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing.Histories;

/// <summary>
/// The one text that follows from a history, whichever way it came about. Where copies differ, the text in force is
/// picked by what it says, never by whose it is, and the others are kept to be chosen from.
/// </summary>
internal sealed partial class ShownText
{
    private readonly RecordHistory _history;
    private readonly Dictionary<string, string> _values = new(StringComparer.Ordinal);
    private readonly List<OpenKey> _conflicts = [];

    internal ShownText(RecordHistory history)
    {
        _history = history;
        var entries = Entries(Keys.Top);
        var tail = Value(Keys.Comment(Keys.Top)) ?? "";
        var outline = new Outline(IndentBelow(Keys.Top), entries, tail);
        var isNote = history.Type == RecordType.Note && entries is not [{ Key: "=" }];
        Text = (isNote ? outline with { Head = "---\n" } : outline).Text;
        _conflicts.Sort((a, b) => string.CompareOrdinal(a.Key, b.Key));
    }

    /// <summary>The record's text.</summary>
    internal string Text { get; }

    /// <summary>What is said at each key that is in the text.</summary>
    internal IReadOnlyDictionary<string, string> Values => _values;

    /// <summary>The keys at which somebody has to choose, in order.</summary>
    internal IReadOnlyList<OpenKey> Conflicts => _conflicts;

    /// <summary>How often a text puts something under the safety rules.</summary>
    internal static int Safeties(string? text) => text is null ? 0 : Safety().Count(text);

    private List<Entry> Entries(string parent)
    {
        var entries = new List<Entry>();
        var names = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var key in KeyOrder.Of(_history, parent))
        {
            var name = Keys.Last(key);
            if (Own(key) is not { } text) continue;
            var children = name[0] is '>' or '-' ? Entries(key) : [];
            if (name[0] == '>' && children.Count == 0)
            {
                _values.Remove(key);
                continue;
            }
            var entry = new Entry(name, Value(Keys.Comment(key)) ?? "", text, IndentBelow(key), children);
            // The same name as one value and as keys below it: one copy turned the one into the other.
            if (names.TryAdd(name[1..], entries.Count)) entries.Add(entry);
            else entries[names[name[1..]]] = OneOf(parent, entries[names[name[1..]]], entry);
        }
        return entries;
    }

    private Entry OneOf(string parent, Entry first, Entry second)
    {
        var (kept, other) = first.Key[0] is '>' or '-' ? (first, second) : (second, first);
        var lost = Keys.Child(parent, other.Key);
        foreach (var hidden in _history.Under(lost).Prepend(lost)) _values.Remove(hidden);
        _conflicts.Add(new OpenKey(lost, [ChoiceOf(Keys.Child(parent, kept.Key), Outline.TextOf(kept)), ChoiceOf(lost, Outline.TextOf(other))]) { Kept = Keys.Child(parent, kept.Key) });
        return kept;
    }

    private Choice ChoiceOf(string key, string text) => Choose(_history.Marks[key]) with { Text = text };

    private static Choice Choose(IEnumerable<Mark> marks)
    {
        var mark = marks.OrderByDescending(m => m.Date, StringComparer.Ordinal).ThenBy(m => m.Library, StringComparer.Ordinal).ThenBy(m => m.State, StringComparer.Ordinal).First();
        return new Choice(mark.Says, mark.Library, mark.Date);
    }

    // A key's own lines, or null when it is not in the text.
    private string? Own(string key)
    {
        if (!_history.Marks.TryGetValue(key, out var marks)) return null;
        var choices = Differing(marks.Where(m => !m.IsOffered));
        var offered = Differing(marks.Where(m => m.IsOffered)).Where(o => choices.All(c => Same(c.Text) != Same(o.Text))).ToList();
        if (choices.Count == 0 && offered.Count > 0) choices.Add(new Choice(null, "", ""));
        var flag = choices.Find(c => c.Text is { } text && Flag().IsMatch(text));
        if (flag is not null) choices = [flag];
        // What was taken out stays as long as something below it was written by a copy that did not know that.
        if (choices is [{ Text: null } gone] && marks.Where(m => m.IsOut).ToList() is { Count: > 0 } outs && IsWrittenOn(key, outs))
            choices.Insert(0, gone with { Text = outs.MaxBy(m => m.Text, StringComparer.Ordinal)!.Text });
        if (choices.Count + offered.Count > 1) _conflicts.Add(new OpenKey(key, [.. choices, .. offered]));
        return choices is [{ Text: { } shown }, ..] ? _values[key] = shown : null;
    }

    // Comments of both copies are kept, and of two columns the wider one serves both.
    private string? Value(string key)
    {
        if (!_history.Marks.TryGetValue(key, out var marks)) return null;
        if (_history.Type == RecordType.Note && key == Keys.Comment(Keys.Top)) return Own(key);
        var texts = Differing(marks).Select(c => c.Text).OfType<string>().Order(StringComparer.Ordinal).ToList();
        if (texts.Count == 0) return null;
        return _values[key] = Keys.IsIndent(key) ? texts.MaxBy(Number)! : string.Concat(texts);
    }

    private int IndentBelow(string key) => Value(Keys.Indent(key)) is { } text ? Number(text) : 0;

    // No record of ours stands further in than this.
    private static int Number(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? Math.Min(number, 100) : 0;

    private bool IsWrittenOn(string key, List<Mark> outs)
    {
        var known = outs.SelectMany(o => o.Below).ToHashSet(StringComparer.Ordinal);
        return _history.Under(key).SelectMany(k => _history.Marks.GetValueOrDefault(k) ?? []).Any(m => !m.IsOffered && !known.Contains(m.State));
    }

    // One choice for each text, the one in force first: more safety, then something rather than nothing, then by the text.
    private static List<Choice> Differing(IEnumerable<Mark> marks) =>
    [
        .. marks.GroupBy(m => Same(m.Says)).Select(g => Choose(g) with { Text = g.Select(m => m.Says).Max(StringComparer.Ordinal) })
            .OrderByDescending(c => Safeties(c.Text)).ThenByDescending(c => c.Text, StringComparer.Ordinal),
    ];

    private static string? Same(string? text) => text is null ? null : RecordText.Plain(text);

    // These two only rise: who sets one means it, who does not may not have thought of it.
    [GeneratedRegex("""\A(retired|safety)\s*:\s*["']?true["']?\s*(#.*)?\z""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Flag();

    [GeneratedRegex("""(?<![\w-])["']?safety["']?\s*:\s*["']?true(?![\w-])""", RegexOptions.CultureInvariant)]
    private static partial Regex Safety();
}

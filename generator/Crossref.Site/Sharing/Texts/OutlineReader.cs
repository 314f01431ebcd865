using Crossref.Site.Reading;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Sharing.Texts;

/// <summary>
/// Takes a record's text apart. What cannot be cut by whole lines stays one piece, and so does a text that would not
/// come out the same when put together again.
/// </summary>
internal sealed class OutlineReader
{
    private const string Dashes = "---";
    private readonly string[] _lines;

    private OutlineReader(string[] lines) => _lines = lines;

    /// <summary>The outline of a YAML record.</summary>
    /// <param name="text">Its text, each line ended by a line feed.</param>
    internal static Outline Record(string text) => Read(text, "") ?? Whole(text);

    /// <summary>The outline of a note: its front matter by keys, its body in one piece.</summary>
    internal static Outline Note(string text)
    {
        var lines = Outline.Lines(text);
        var end = lines is [Dashes, ..] ? Array.FindIndex(lines, 1, l => l.TrimEnd() == Dashes) : -1;
        return end > 1 && Read(Together(lines[1..end]), Together(lines[end..])) is { } outline ? outline with { Head = Dashes + "\n" } : Whole(text);
    }

    private static Outline Whole(string text) => new(0, [new Entry("=", "", text, 0, [])], "");

    private static string Together(IEnumerable<string> lines) => string.Concat(lines.Select(l => l + "\n"));

    private static Outline? Read(string text, string behind)
    {
        var log = new DiagnosticLog();
        var documents = YamlReader.Read("", text, log).ToList();
        if (log.Found.Count > 0 || documents is not [{ Root: MapNode { Entries.Count: > 0 } map }]) return null;
        var reader = new OutlineReader(Outline.Lines(text));
        if (!reader.IsBlock(map)) return null;
        var (last, entries) = reader.Keys(map.Entries, 0, reader._lines.Length);
        var outline = entries is null ? null : new Outline(map.Place.Column - 1, entries, Together(reader._lines[last..]) + behind);
        return outline?.Text == text + behind ? outline : null;
    }

    private bool IsBlock(Node node) => At(node) is not ('{' or '[');

    private char At(Node node) =>
        node.Place.Line <= _lines.Length && node.Place.Column <= _lines[node.Place.Line - 1].Length ? _lines[node.Place.Line - 1][node.Place.Column - 1] : '\0';

    // The keys of a map between two lines, and the line behind the last of them.
    private (int End, List<Entry>? Entries) Keys(IReadOnlyList<MapEntry> keys, int from, int to)
    {
        var entries = new List<Entry>();
        for (var i = 0; i < keys.Count; i++)
        {
            var (start, column) = (keys[i].Place.Line - 1, keys[i].Place.Column - 1);
            var end = i + 1 < keys.Count ? keys[i + 1].Place.Line - 1 : to;
            if (start < from || end <= start || column != keys[0].Place.Column - 1 || !IsFirst(start, column)) return (from, null);
            var (next, entry) = Key(keys[i], start, end, column);
            if (entry is null) return (from, null);
            entries.Add(entry with { Lead = Together(_lines[from..start]) });
            from = next;
        }
        return (from, entries);
    }

    private (int End, Entry? Entry) Key(MapEntry key, int start, int end, int column)
    {
        var value = key.Value;
        if (IsBlock(value) && value.Place.Line - 1 > start)
        {
            var (first, indent) = (value.Place.Line - 1, value.Place.Column - 1 - column);
            var header = ContentEnd(start, first, -1);
            var (last, children) = value switch
            {
                MapNode { Entries.Count: > 0 } map => Keys(map.Entries, header, end),
                ListNode { Items.Count: > 0 } list => Items(list, header, end),
                _ => (end, null),
            };
            if (children is not null) return (last, new Entry(">" + key.Key, "", Dedented(start, header, column), indent, children));
        }
        var own = ContentEnd(start, end, IsBlockText(value) ? column : -1);
        return (own, Fits(start, own, column) ? new Entry("=" + key.Key, "", Dedented(start, own, column), 0, []) : null);
    }

    private (int End, List<Entry>? Entries) Items(ListNode list, int from, int to)
    {
        var items = new List<Entry>();
        var column = list.Place.Column - 1;
        for (var i = 0; i < list.Items.Count; i++)
        {
            if (list.Items[i] is not MapNode { Entries.Count: > 0 } map || NameOf(map) is not { } name) return (from, null);
            var (start, end) = (map.Place.Line - 1, i + 1 < list.Items.Count ? list.Items[i + 1].Place.Line - 1 : to);
            if (start < from || end <= start || !IsFirst(start, column) || _lines[start][column] != '-' || !string.IsNullOrWhiteSpace(_lines[start][(column + 1)..(map.Place.Column - 1)])) return (from, null);
            var lead = Together(_lines[from..start]);
            var second = IsBlock(map) && map.Entries.Count > 1 ? map.Entries[1].Place.Line - 1 : end;
            var isFlatFirst = map.Entries[0].Value is ScalarNode || !IsBlock(map.Entries[0].Value);
            var own = ContentEnd(start, second, IsBlock(map) && IsBlockText(map.Entries[0].Value) ? column : -1);
            if (second <= start || !isFlatFirst && IsBlock(map) || !Fits(start, own, column)) return (from, null);
            var (last, children) = IsBlock(map) && map.Entries.Count > 1 ? Keys([.. map.Entries.Skip(1)], own, end) : (own, []);
            if (children is null) return (from, null);
            items.Add(new Entry((IsBlock(map) ? "-" : "*") + name, lead, Dedented(start, own, column), children.Count == 0 ? 0 : map.Place.Column - 1 - column, children));
            from = last;
        }
        return items.Select(i => i.Key[1..]).Distinct(StringComparer.Ordinal).Count() == items.Count ? (from, items) : (from, null);
    }

    private static string? NameOf(MapNode map)
    {
        var key = map.Entries.FirstOrDefault(e => e.Key is "assembly" or "position") ?? map.Entries[0];
        return key.Value is ScalarNode { Text: var text } ? text : null;
    }

    private bool IsFirst(int line, int column) => column <= _lines[line].Length && string.IsNullOrWhiteSpace(_lines[line][..column].Replace("-", "", StringComparison.Ordinal));

    private bool IsBlockText(Node value) => value is ScalarNode && At(value) is '|' or '>';

    // Where the lines that say something end: comments and blank lines behind them belong to what follows. In a block
    // of text everything that stands further in than its key is text.
    private int ContentEnd(int start, int end, int textColumn)
    {
        for (; end > start + 1; end--)
        {
            var line = _lines[end - 1].TrimStart();
            if (line.Length > 0 && (line[0] != '#' || textColumn >= 0 && _lines[end - 1].Length - line.Length > textColumn)) break;
        }
        return end;
    }

    private bool Fits(int start, int end, int column) =>
        _lines[(start + 1)..end].All(l => string.IsNullOrWhiteSpace(l) || l.Length > column && string.IsNullOrWhiteSpace(l[..column]));

    private string Dedented(int start, int end, int column) =>
        Together(_lines[start..end].Select(l => string.IsNullOrWhiteSpace(l) || l.Length < column ? l : l[column..]));
}

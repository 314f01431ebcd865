using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing.Histories;

/// <summary>A record's text as a table: what is said at every key, and in which order the keys stand.</summary>
internal sealed class FlatText
{
    private readonly Dictionary<string, string> _values = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<string>> _order = new(StringComparer.Ordinal);

    internal FlatText(Outline outline)
    {
        Set(Keys.Indent(Keys.Top), FormattableString.Invariant($"{outline.Indent}"));
        Set(Keys.Comment(Keys.Top), outline.Tail);
        Add(Keys.Top, outline.Entries);
    }

    /// <summary>What is said, by key; comments that are not there are not in it.</summary>
    internal IReadOnlyDictionary<string, string> Values => _values;

    /// <summary>The keys below a key, in order.</summary>
    internal IReadOnlyDictionary<string, IReadOnlyList<string>> Order => _order;

    private void Add(string parent, IReadOnlyList<Entry> entries)
    {
        _order[parent] = [.. entries.Select(e => Keys.Child(parent, e.Key))];
        foreach (var entry in entries)
        {
            var key = Keys.Child(parent, entry.Key);
            _values[key] = entry.Text;
            Set(Keys.Comment(key), entry.Lead);
            if (entry.Children.Count == 0) continue;
            Set(Keys.Indent(key), FormattableString.Invariant($"{entry.Indent}"));
            Add(key, entry.Children);
        }
    }

    private void Set(string key, string text)
    {
        if (text.Length > 0) _values[key] = text;
    }
}

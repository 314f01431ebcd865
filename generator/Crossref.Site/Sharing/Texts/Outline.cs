using System.Text;

namespace Crossref.Site.Sharing.Texts;

/// <summary>A record's text taken apart by its keys. Put together again it is the same text, to the character.</summary>
/// <param name="Indent">The column of the outermost keys.</param>
/// <param name="Entries">The outermost keys in order.</param>
/// <param name="Tail">What stands behind the last key: comments of a record, the body of a note with the line before it.</param>
internal sealed record Outline(int Indent, IReadOnlyList<Entry> Entries, string Tail)
{
    /// <summary>What stands before everything: a note's first line of dashes.</summary>
    internal string Head { get; init; } = "";

    /// <summary>The whole text.</summary>
    internal string Text
    {
        get
        {
            var text = new StringBuilder(Head);
            foreach (var entry in Entries) Write(text, entry, Indent);
            return text.Append(Tail).ToString();
        }
    }

    /// <summary>The text of one key with everything below it.</summary>
    internal static string TextOf(Entry entry)
    {
        var text = new StringBuilder();
        Write(text, entry, 0);
        return text.ToString();
    }

    private static void Write(StringBuilder text, Entry entry, int column)
    {
        text.Append(entry.Lead);
        foreach (var line in Lines(entry.Text)) text.Append(string.IsNullOrWhiteSpace(line) ? "" : new string(' ', column)).Append(line).Append('\n');
        foreach (var child in entry.Children) Write(text, child, column + entry.Indent);
    }

    /// <summary>The lines of a text that ends with a line feed.</summary>
    internal static string[] Lines(string text) => text.Length == 0 ? [] : text[..^1].Split('\n');
}

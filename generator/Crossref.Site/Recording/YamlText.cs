using System.Buffers;
using System.Globalization;
using System.Text;
using Crossref.Core.Checking;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Recording;

/// <summary>
/// Writes a record as people write one: a key a line, short maps and lists in brackets, quotes only where the text
/// would be read as something else. What is written reads back to the same tree.
/// </summary>
internal static class YamlText
{
    // Besides letters and digits; a comma only where no bracket is open. A text that begins with any of them is quoted.
    private const string Plain = " ._/+()'%=;~$<>-";
    private const char FirstOther = '\u00A1';

    /// <summary>The document, each line ended by a line feed.</summary>
    internal static string Write(MapNode map)
    {
        var text = new StringBuilder();
        foreach (var entry in map.Entries)
        {
            text.Append(Scalar(entry.Key, ',')).Append(':');
            if (entry.Value is ListNode { Items: [MapNode or ListNode, ..] } list)
                foreach (var item in list.Items) text.Append("\n  - ").Append(Inline(item));
            else
                text.Append(' ').Append(entry.Value is ScalarNode scalar ? Scalar(scalar.Text) : Inline(entry.Value));
            text.Append('\n');
        }
        return text.ToString();
    }

    private static string Inline(Node node) => node switch
    {
        ScalarNode scalar => Scalar(scalar.Text, ','),
        ListNode list => $"[{string.Join(", ", list.Items.Select(Inline))}]",
        MapNode map => $"{{{string.Join(", ", map.Entries.Select(e => $"{Scalar(e.Key, ',')}: {Inline(e.Value)}"))}}}",
        _ => throw new ArgumentException("A value that was refused cannot be written.", nameof(node)),
    };

    private static string Scalar(string text, char except = '\0')
    {
        if (text.Length > 0 && IsWord(text[0]) && text[^1] != ' ' && text.All(c => IsWord(c) || c != except && (c == ',' || Plain.Contains(c, StringComparison.Ordinal))) &&
            HiddenCharacters.IndexIn(text) < 0) return text;
        var quoted = new StringBuilder("\"");
        for (var (i, length) = (0, 0); i < text.Length; i += length)
        {
            var isWhole = Rune.DecodeFromUtf16(text.AsSpan(i), out var rune, out length) == OperationStatus.Done;
            if (!isWhole) quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)text[i]:X4}");
            else if (HiddenCharacters.IndexIn(text.AsSpan(0, i + length), i) == i) quoted.Append(CultureInfo.InvariantCulture, $"\\U{rune.Value:X8}");
            else if (text[i] is '"' or '\\') quoted.Append('\\').Append(text[i]);
            else if (text[i] is '\t' or '\n') quoted.Append(text[i] == '\t' ? "\\t" : "\\n");
            else quoted.Append(text, i, length);
        }
        return quoted.Append('"').ToString();
    }

    private static bool IsWord(char c) => char.IsAsciiLetterOrDigit(c) || c >= FirstOther;
}

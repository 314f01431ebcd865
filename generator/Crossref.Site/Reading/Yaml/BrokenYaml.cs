using System.Text.RegularExpressions;
using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;

namespace Crossref.Site.Reading.Yaml;

/// <summary>Looks at the lines around the place where a document stopped making sense and says what is probably wrong.</summary>
internal static partial class BrokenYaml
{
    /// <summary>What to report for a document that broke off at a line and column (from 1).</summary>
    internal static (DiagnosticCode Code, string Message, string Hint, int Line, int Column) Explain(string text, int line, int column)
    {
        var lines = text.Split('\n');
        var at = Math.Clamp(line, 1, lines.Length);
        if (Tab(lines) is var (tabLine, tabColumn))
            return (YamlCodes.Tab, "a tab in the indentation", "indent with spaces; most editors can turn tabs into spaces", tabLine, tabColumn);
        var directive = Array.FindIndex(lines, l => l.StartsWith('%'));
        if (directive >= 0)
            return (YamlCodes.Broken, "a line that begins with % is an instruction to the YAML reader", "leave it out; text that begins with % needs quotes", directive + 1, 1);
        var (message, hint) = InLine(lines[at - 1]);
        if (message.Length > 0) return (YamlCodes.Broken, message, hint, at, Math.Max(1, column));
        if (OpenBracket(lines, at) is var (openLine, openColumn))
        {
            var bracket = lines[openLine - 1][openColumn - 1];
            return (YamlCodes.Broken, $"this {bracket} is not closed, or a comma is missing after an entry", $"close it with {(bracket == '[' ? ']' : '}')}, and write commas between the entries", openLine, openColumn);
        }
        if (at > 1 && Value(lines[at - 2]).Length > 0 && Indentation(lines[at - 1]) > Indentation(lines[at - 2]))
            return (YamlCodes.Broken, "this line stands further in than the one above it", "begin the keys of one record in the same column", at, Indentation(lines[at - 1]) + 1);
        return (YamlCodes.Broken, "the document cannot be followed from here on", "check the indentation against the line above, and that every key is followed by a colon and a space", at, Math.Max(1, column));
    }

    // A tab may spoil what comes lines later; in a document that is broken anyhow the first one is the reason.
    private static (int Line, int Column)? Tab(string[] lines)
    {
        for (var l = 0; l < lines.Length; l++)
        {
            var tab = lines[l].AsSpan(0, Indentation(lines[l])).IndexOf('\t');
            if (tab >= 0 && !string.IsNullOrWhiteSpace(lines[l])) return (l + 1, tab + 1);
        }
        return null;
    }

    private static (string Message, string Hint) InLine(string line)
    {
        var start = line.TrimStart().TrimStart('-', ' ');
        var value = Value(line);
        if (HalfCharacter().IsMatch(line)) return ("an escape here stands for half a character", "write the character itself");
        if (start is ['@' or '`', ..]) return ($"a value cannot begin with {start[0]}", "put it in quotes");
        if (value is ['@' or '`' or '%' or '*' or '&' or '!', ..]) return ($"a value cannot begin with {value[0]}", "put it in quotes");
        if (value is ['"', .. var rest] && !rest.Contains('"', StringComparison.Ordinal)) return ("a double quote is not closed", "close it at the end of the text, or leave both out");
        if (value is ['\'', .. var inner] && inner.Count(c => c == '\'') % 2 == 0) return ("a single quote is not closed", "close it at the end of the text; an apostrophe inside single quotes is written twice");
        if (value is not (['[' or '{', ..]) && value.Contains(": ", StringComparison.Ordinal)) return ("a colon inside a value starts another key", "put text that holds a colon and a space in quotes");
        return ("", "");
    }

    // The nearest value above, or else below, that opens more brackets than its own line closes.
    private static (int Line, int Column)? OpenBracket(string[] lines, int at)
    {
        foreach (var l in Enumerable.Range(1, at).Reverse().Concat(Enumerable.Range(at + 1, lines.Length - at)))
        {
            var line = lines[l - 1];
            var open = line.AsSpan().IndexOfAny('[', '{');
            if (open >= 0 && line.Count(c => c is '[' or '{') > line.Count(c => c is ']' or '}')) return (l, open + 1);
        }
        return null;
    }

    [GeneratedRegex(@"\\u[dD][89a-fA-F][0-9a-fA-F]{2}", RegexOptions.CultureInvariant)]
    private static partial Regex HalfCharacter();

    private static int Indentation(string line) => line.Length - line.TrimStart(' ', '\t').Length;

    private static string Value(string line)
    {
        var colon = line.IndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? "" : line[(colon + 2)..].TrimStart();
    }
}

using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;

namespace Crossref.Site.Reading.Yaml;

/// <summary>Looks at the line where a document stopped making sense and says what is probably wrong with it.</summary>
internal static class BrokenYaml
{
    /// <summary>What to report for a document that broke off at a line and column (from 1).</summary>
    internal static (DiagnosticCode Code, string Message, string Hint, int Line, int Column) Explain(string text, int line, int column)
    {
        var lines = text.Split('\n');
        var at = Math.Clamp(line, 1, lines.Length);
        var here = lines[at - 1];

        // A tab breaks the structure at the next key, which may stand a line further down.
        for (var l = at; l >= Math.Max(1, at - 1); l--)
        {
            var tab = lines[l - 1].AsSpan(0, Indentation(lines[l - 1])).IndexOf('\t');
            if (tab >= 0) return (YamlCodes.Tab, "a tab in the indentation", "indent with spaces; most editors can turn tabs into spaces", l, tab + 1);
        }
        var start = here.TrimStart().TrimStart('-', ' ');
        var (message, hint) = start switch
        {
            ['%', ..] => ("a line that begins with % is an instruction to the YAML reader", "leave it out; text that begins with % needs quotes"),
            ['@' or '`', ..] => ($"a value cannot begin with {start[0]}", "put it in quotes"),
            _ when OpenQuote(here) is { } quote => ($"a {quote} is not closed", "close it at the end of the text, or leave both out; inside '…' an apostrophe is written twice"),
            _ when Value(here) is ['@' or '`' or '%' or '*' or '&' or '!', ..] value => ($"a value cannot begin with {value[0]}", "put it in quotes"),
            _ when Value(here).Contains(": ", StringComparison.Ordinal) && !Bracketed(here) => ("a colon inside a value starts another key", "put text that holds a colon and a space in quotes"),
            _ when Bracketed(here) => ("a bracket or brace is not closed, or a comma is missing", "check that every [ has its ], every { its }, and that commas stand between the entries"),
            _ => ("the document cannot be followed from here on", "check the indentation against the line above, and that every key is followed by a colon and a space"),
        };
        return (YamlCodes.Broken, message, hint, at, Math.Max(1, column));
    }

    private static int Indentation(string line) => line.Length - line.TrimStart(' ', '\t').Length;

    private static string Value(string line)
    {
        var colon = line.IndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? "" : line[(colon + 2)..].TrimStart();
    }

    private static bool Bracketed(string line) => Value(line) is ['[' or '{', ..] || line.TrimStart() is ['[' or '{' or ']' or '}', ..];

    private static string? OpenQuote(string line) => Value(line) switch
    {
        ['"', .. var rest] when !rest.Contains('"', StringComparison.Ordinal) => "double quote",
        ['\'', .. var rest] when rest.Count(c => c == '\'') % 2 == 0 => "single quote",
        _ => null,
    };
}

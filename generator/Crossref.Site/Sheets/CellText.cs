using System.Text;
using System.Text.RegularExpressions;

namespace Crossref.Site.Sheets;

/// <summary>
/// Text as it stands in a cell. A spreadsheet runs what begins like a formula and turns what looks like a number or a
/// date into one: <c>007</c>, <c>1E5</c>, <c>2-1</c>. So an apostrophe is put before such a text; reading takes away
/// just those, and what was written comes back to the letter.
/// </summary>
internal static partial class CellText
{
    private const char Mark = '\'';

    // A text that holds one of these becomes two cells where somebody opens the sheet with another separator.
    private const string Separators = ",;\t\n\r";

    /// <summary>A text that must come back as it is.</summary>
    internal static string Write(string text) => Guard(MarkedAs(text, IsChanged) ? Mark + text : text);

    /// <summary>A figure, which a spreadsheet may take for one.</summary>
    internal static string WriteFigure(string figure) => Guard(figure);

    /// <summary>The text of a cell.</summary>
    internal static string Read(string cell)
    {
        var text = Pieces(cell, s => s is [Mark, .. var rest] && MarkedAs(rest, IsFormula) ? rest : s);
        return text is [Mark, .. var inner] && MarkedAs(inner, IsChanged) ? inner : text;
    }

    /// <summary>Whether a spreadsheet would run it: it begins with = + - @, a tab or a line end, maybe behind spaces or quotes.</summary>
    internal static bool IsFormula(string text)
    {
        if (text is ['\t' or '\r' or '\n', ..]) return true;
        var start = text.AsSpan();
        while (start is [var c, ..] && (c == '"' || char.IsWhiteSpace(c))) start = start[1..];
        return start is ['=' or '+' or '-' or '@' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20', ..];
    }

    private static string Guard(string text) => Pieces(text, s => MarkedAs(s, IsFormula) ? Mark + s : s);

    // Marks pile up, so that a text which itself begins with a mark comes back with it.
    private static bool MarkedAs(string text, Func<string, bool> needsOne)
    {
        while (text is [Mark, .. var rest] && !needsOne(text)) text = rest;
        return needsOne(text);
    }

    private static string Pieces(string text, Func<string, string> change)
    {
        if (text.AsSpan().IndexOfAny(Separators) < 0) return change(text);
        var result = new StringBuilder();
        var start = 0;
        for (var at = 0; at <= text.Length; at++)
        {
            if (at < text.Length && !Separators.Contains(text[at], StringComparison.Ordinal)) continue;
            result.Append(change(text[start..at]));
            if (at < text.Length) result.Append(text[at]);
            start = at + 1;
        }
        return result.ToString();
    }

    private static bool IsChanged(string text) => !IsFormula(text) && Changed().IsMatch(text);

    // Numbers with whatever stands around them, times, fractions, dates with the names of months in the languages
    // whose spreadsheets we know, the words for yes and no, and what a spreadsheet writes for an error.
    [GeneratedRegex(@"^\s*([0-9 .,\-/:%$€£¥()eE+\u00A0\u202F]*[0-9][0-9 .,\-/:%$€£¥()eE+\u00A0\u202F]*([ap]m?)?|[0-9]{1,4}[ ./\-]*(jan|feb|fév|mar|mär|mrz|apr|abr|avr|may|mai|maa|mei|mag|jun|jui|giu|jul|lug|aug|aou|aoû|ago|sep|set|oct|okt|ott|nov|dec|dez|déc|dic|ene|gen)\p{L}*[ ./\-,]*([0-9]{1,4})?|(jan|feb|fév|mar|mär|mrz|apr|abr|avr|may|mai|maa|mei|mag|jun|jui|giu|jul|lug|aug|aou|aoû|ago|sep|set|oct|okt|ott|nov|dec|dez|déc|dic|ene|gen)\p{L}*[ ./\-,]*[0-9]{1,4}([ ./\-,]+[0-9]{1,4})?|true|false|#.*)\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.Singleline)]
    private static partial Regex Changed();
}

using System.Text;

namespace Crossref.Site.Pages.Templating;

/// <summary>Turns text into HTML that shows it, inside an element or a quoted attribute.</summary>
internal static class Escape
{
    internal static string Html(string text)
    {
        if (!NeedsIt(text)) return text;
        var html = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => html.Append("&amp;"),
                '<' => html.Append("&lt;"),
                '>' => html.Append("&gt;"),
                '"' => html.Append("&quot;"),
                '\'' => html.Append("&#39;"),
                _ => html.Append(IsRefused(c) ? '\uFFFD' : c),
            };
        }
        return html.ToString();
    }

    private static bool NeedsIt(string text)
    {
        foreach (var c in text)
            if (c is '&' or '<' or '>' or '"' or '\'' || IsRefused(c)) return true;
        return false;
    }

    // HTML has no way to write these; a browser would drop or replace them.
    private static bool IsRefused(char c) => char.IsControl(c) && c is not ('\t' or '\n' or '\r');
}

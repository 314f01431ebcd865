using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Crossref.Site.Pages;

namespace Crossref.Site.Tests.Hostile;

/// <summary>What hostile text must not be able to change on a page, and the marks of a page that does harm.</summary>
internal static class PageShape
{
    private const string Policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:";

    internal static IDocument Parse(string html) => new HtmlParser().ParseDocument(html);

    /// <summary>
    /// Every element with its path and the names of its attributes. Order is left out: another text may be sorted elsewhere.
    /// </summary>
    internal static string Of(IDocument page) => string.Join('\n', page.All
        .Select(e => $"{string.Join('/', e.Ancestors<IElement>().Reverse().Select(a => a.LocalName))}/{e.LocalName} {string.Join(' ', e.Attributes.Select(a => a.Name))}")
        .Order(StringComparer.Ordinal));

    /// <summary>Everything on a page that runs, leads out or lacks its protection.</summary>
    internal static IEnumerable<string> Harm(IDocument page)
    {
        var policies = page.QuerySelectorAll("meta[http-equiv]").Select(m => m.GetAttribute("content")).ToList();
        if (policies is not [Policy]) yield return $"policy {string.Join('|', policies)}";
        foreach (var script in page.QuerySelectorAll("script").Where(s => s.TextContent.Length > 0)) yield return $"script {script.TextContent}";
        foreach (var element in page.QuerySelectorAll("style, iframe, object, embed, base, link:not([rel=stylesheet]), textarea:not(:empty), template"))
            yield return element.LocalName;
        foreach (var attribute in page.All.SelectMany(e => e.Attributes))
        {
            if (attribute.Name == "style" || attribute.Name.StartsWith("on", StringComparison.Ordinal)) yield return $"{attribute.Name}={attribute.Value}";
            if (attribute.Name is "href" or "src" or "action" or "formaction" or "srcset" or "xlink:href" && LeadsOut(attribute.Value)) yield return $"{attribute.Name}={attribute.Value}";
        }
    }

    /// <summary>Every file of a script is plain ASCII, one call, one name and one string in which no quote ends early.</summary>
    internal static bool IsPlainScript(SiteFile file) => System.Text.RegularExpressions.Regex.IsMatch(
        file.AsText(), """\AcrossrefLookup\("[a-z0-9/-]+","([ !#-\[\]-~]|\\["\\tn]|\\u[0-9a-f]{4})*"\);\n\z""");

    // A browser drops line breaks and tabs wherever they stand in an address, and blanks before it.
    private static bool LeadsOut(string address) => System.Text.RegularExpressions.Regex.IsMatch(
        string.Concat(address.Where(c => c > ' ')), @"^([a-zA-Z][a-zA-Z0-9+.-]*:|[/\\])");
}

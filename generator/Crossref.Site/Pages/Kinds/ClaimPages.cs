using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>Every claim, newest first, with those that were taken back.</summary>
internal sealed class ClaimPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => desk.Map.ClaimPages.Select((page, i) => Of(page, i));

    private Sheet Of(ClaimPage page, int index)
    {
        var links = desk.LinksFrom(page.Path);
        var pages = desk.Map.ClaimPages;
        var view = new ClaimsView(
            [.. page.Claims.Select(new ClaimLines(desk, links).Of)],
            pages.Count == 1 ? [] : [.. pages.Select((p, i) => new Link(p == page ? null : links.Href(p.Path), Span(p)))],
            desk.Library.Claims.Count);
        return new Sheet(page.Path, "claims.html", "Claims", index == 0 ? "Claims" : $"Claims, {Span(page)}", Crumbs.Of(links), view) { Reference = "claims" };
    }

    private static string Span(ClaimPage page) => page.Claims.Count == 0 ? "none" : $"{page.Claims[^1].Date} to {page.Claims[0].Date}";
}

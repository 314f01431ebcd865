using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>The way to a page from the first one.</summary>
internal static class Crumbs
{
    internal static IReadOnlyList<Link> Of(PageLinks links, params IEnumerable<Link> way) => [new Link(links.Href(PageMap.Home), "First page"), .. way];

    internal static IReadOnlyList<Link> Of(PageLinks links, Position position) =>
        Of(links, links.Family(position.Family), links.Assembly($"{position.Family}/{position.Assembly}"));
}

using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A source's page: what it is, and everything that rests on it.</summary>
internal sealed class SourcePages(Desk desk)
{
    // A workshop log may carry thousands; the pages of claims have them all.
    private const int MostClaims = 200;

    internal IEnumerable<Sheet> All() => RecordIndex.Sorted(desk.Library.Sources.Values).Select(Of);

    private Sheet Of(Source source)
    {
        var path = desk.Map.Of(source)!.Value.Path;
        var links = desk.LinksFrom(path);
        var parts = new CandidateViews(desk, links);
        var view = new SourceView
        {
            Facts = [.. Facts(source)],
            Weight = Weight(source),
            Claims = [.. desk.Index.ClaimsFrom(source.Id).Take(MostClaims).Select(new ClaimLines(desk, links).Of)],
            MoreClaims = Math.Max(desk.Index.ClaimsFrom(source.Id).Count() - MostClaims, 0),
            AllClaims = links.Overview("claims", "all claims"),
            Lists = [.. desk.Index.PositionsFrom(source.Id).GroupBy(p => (p.Family, p.Assembly)).Select(g => new SourceFamily(
                links.Family(g.Key.Family), links.Assembly($"{g.Key.Family}/{g.Key.Assembly}"),
                [.. g.Select(p => Phrase.Of(links.Position(p.Address), p.Locator is { } locator ? ", " + locator : null))]))],
            Parts = [.. desk.Index.PartsFrom(source.Id).Select(p => parts.Part(p.Id))],
            Note = source.Note,
        };
        return new Sheet(path, "source.html", "Source", source.Title, Crumbs.Of(links, links.Overview("sources", "Sources")), view) { Reference = source.Id };
    }

    private string Weight(Source source) => source switch
    {
        { Documents: false } => "It documents nothing: a statement in it counts for what somebody did or saw, never for more.",
        { From: { } shop } when !desk.Library.Documents(new Ref(source.Id, source.Place)) =>
            $"It came from {desk.Library.ShopName(shop)} and documents nothing here yet. Look at it; if it is what it says, write its id under confirmed: in the library's own document.",
        _ => "It documents: what it says of a part and a place stands as documented.",
    };

    private IEnumerable<Pair> Facts(Source source)
    {
        if (source.From is { } shop) yield return new Pair("Came from", desk.Library.ShopName(shop));
        yield return new Pair("Type", Words.Of(source.Kind).Replace('-', ' '));
        yield return new Pair("Dated", source.Dated.ToString());
        yield return new Pair("Kept", source.Kept ?? "not on record");
        if (source.By is { } by) yield return new Pair("By", by);
    }
}

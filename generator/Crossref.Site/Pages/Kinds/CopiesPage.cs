using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;

namespace Crossref.Site.Pages.Kinds;

/// <summary>What other copies brought: what is left to be chosen, and what came in last.</summary>
internal sealed class CopiesPage(Desk desk)
{
    internal IEnumerable<Sheet> All()
    {
        var path = PageMap.Overview("copies");
        var links = desk.LinksFrom(path);
        yield return new Sheet(path, "copies.html", "Copies", "From other copies", Crumbs.Of(links, links.Overview("changes", "What changed")), View(links)) { Reference = "copies" };
    }

    private CopiesView View(PageLinks links) => new()
    {
        Open = [.. desk.Options.Conflicts.Select(c => Of(c, links))],
        Date = desk.Options.CameIn?.Date,
        From = desk.Options.CameIn is { } came ? desk.Library.ShopName(came.From) : null,
        Groups = desk.Options.CameIn is not { } last ? [] :
        [
            .. CombineGroups.All.Select(g => new CopiesGroup(g.Heading, [.. last.Decisions.Where(d => d.Outcome == g.Outcome).Select(d => Of(d, links))])).Where(g => g.Lines.Count > 0),
        ],
    };

    private static ConflictView Of(Conflict conflict, PageLinks links) => new(
        Phrase.Of(Words.Of(conflict.Type) + " ", Link(conflict.Type, conflict.Name, links)), "content/" + conflict.File,
        [.. conflict.Keys.Select(k => new ConflictKeyView(CombineGroups.Name(k.Key), [.. k.Choices.Select((c, i) =>
            new ChoiceRow(i + 1, c.Text ?? "(nothing)", c.Library, c.Date, i == 0))]))]);

    private static Phrase Of(Decision decision, PageLinks links)
    {
        var why = decision.Why.Length == 0 ? "" : ". " + decision.Why;
        return decision.Outcome == CombineOutcome.Picture
            ? Phrase.Of(decision.Name + why)
            : Phrase.Of(Words.Of(decision.Type) + " ", Link(decision.Type, decision.Name, links), CombineGroups.Of(decision.Keys) + why);
    }

    private static Link Link(RecordType type, string id, PageLinks links) => type == RecordType.Library ? new Link(null, id) : links.Record(id);
}

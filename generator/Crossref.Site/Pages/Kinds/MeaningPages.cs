using System.Globalization;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>What the words and the cautions of every other page mean.</summary>
internal sealed class MeaningPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => [Cautions(), Standings()];

    private Sheet Cautions()
    {
        var path = PageMap.Overview("cautions");
        var links = desk.LinksFrom(path);
        var assemblies = desk.Library.Assemblies.Values.OrderBy(a => a.Address, StringComparer.Ordinal).ToList();
        var hazards = Hazard.All.Concat(assemblies.SelectMany(a => a.Cautions)).DistinctBy(h => h.Id, StringComparer.Ordinal)
            .Select(h => new HazardEntry(
                PageMap.Anchor(h.Id), h.Name, h.Advice,
                [.. assemblies.Where(a => a.Cautions.Any(c => c.Id == h.Id)).Select(a => links.Assembly(a.Address) with { Text = NameOf(a) })]));
        return new Sheet(path, "cautions.html", "Cautions", "Cautions", Crumbs.Of(links), new CautionsView([.. hazards])) { Reference = "cautions" };
    }

    private string NameOf(Assembly assembly) => $"{desk.Library.Families[assembly.Family].Name}, {assembly.Name}";

    private Sheet Standings()
    {
        var path = PageMap.Overview("standings");
        var card = desk.Library.Card;
        var proving = card.Proving;
        var view = new StandingsView(
            [.. StandingWords.Ladder.Select(w => Entry(w, Words.Parse<Basis>(w.Name)!.Value >= card.AcceptFrom ? "accepted" : "stands"))],
            [.. StandingWords.Others.Select(w => Entry(w, w.Name.Replace(' ', '-')))],
            [.. StandingWords.Relations.Select(w => Entry(w, "accepted"))],
            [.. StandingWords.Grades.Select(w => Entry(w, "stands"))],
            Words.Of(card.AcceptFrom),
            [
                new Pair("A run counts from", Number(proving.Ran) + " sheets or cycles"),
                new Pair("One run proves from", string.Create(CultureInfo.InvariantCulture, $"{proving.ShareOfLife * 100:0.#} % of the part’s normal life")),
                new Pair("Two runs prove from", $"{Number(proving.Sheets)} sheets or cycles each, or {Number(proving.Hours)} hours"),
            ]);
        return new Sheet(path, "standings.html", "Meanings", "What the words mean", Crumbs.Of(desk.LinksFrom(path)), view) { Reference = "standings" };
    }

    private static WordEntry Entry(Pair word, string look) =>
        new(PageMap.Anchor(word.Name.Replace(' ', '-')), word.Name, look, (string)word.Value!, look == "accepted");

    private static string Number(decimal value) => CandidateViews.Number(value);
}

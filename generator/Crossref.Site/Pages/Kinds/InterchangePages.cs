using System.Globalization;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>The interchange as tables: the parts of a kind, and the jobs that have a name, each over the families.</summary>
internal sealed class InterchangePages(Desk desk)
{
    private const int PartsPerPage = 400;

    private readonly Dictionary<(string Part, string Family), FamilyStanding> _standings = FamilyStanding.Of(desk.Library, desk.Answers);

    internal IEnumerable<Sheet> All() => PartKind.All.SelectMany(Kind).Append(Roles());

    private IEnumerable<Sheet> Kind(PartKind kind)
    {
        var parts = RecordIndex.Sorted(desk.Library.Parts.Values).Where(p => p.Kind == kind).ToList();
        var families = Families().Where(f => parts.Exists(p => _standings.ContainsKey((p.Id, f.Id)))).ToList();
        var pages = parts.Chunk(PartsPerPage).ToList();
        for (var i = 0; i < pages.Count; i++)
        {
            var path = PageMap.Kind(kind, i + 1);
            var links = desk.LinksFrom(path);
            var stock = new CandidateViews(desk, links);
            var group = new TableGroup("parts", null, ["Part", "Sizes", .. families.Select(f => f.Name), "In the house"], [.. pages[i].Select(p => Row(p, families, links, stock))], "")
            {
                Sortable = true,
                Look = "interchange",
            };
            var title = char.ToUpperInvariant(kind.Plural[0]) + kind.Plural[1..];
            var lede = "The best word that a part has anywhere in a family, without asking for a machine. " +
                (kind.Safety ? "These are safety parts: only the maker's document for that very machine makes an answer." : "The place or the part says more.");
            yield return new Sheet(
                path, "table.html", "Interchange", pages.Count == 1 ? title : $"{title}, page {i + 1} of {pages.Count}",
                Crumbs.Of(links, [links.Overview("parts", "Parts"), .. OtherPages(kind, pages.Count, i, links)]),
                new TableView(lede, [group])) { Reference = "kinds/" + kind.Name };
        }
    }

    private TableRow Row(Part part, IReadOnlyList<Family> families, PageLinks links, CandidateViews stock)
    {
        var standings = families.Select(f => _standings.GetValueOrDefault((part.Id, f.Id))).ToList();
        var name = part.Maker is { } maker ? $"{part.Name}, {maker}" : part.Name;
        return new TableRow(null, [Phrase.Of(links.Part(part.Id), new Link(null, name, "sub")), SizesOf(part), .. standings.Select(s => Cell(s, part, links)), stock.StockText(part.Id)])
        {
            Keys = [null, null, .. standings.Select(s => s?.Order), stock.InHouse(part.Id)],
        };
    }

    private static Phrase? Cell(FamilyStanding? standing, Part part, PageLinks links) => standing is null ? null : Phrase.Of(
        StandingWords.Link(links, standing.Word, standing.Look),
        (standing.Positions is [var only] ? links.Position(only) : links.Part(part.Id) with { Text = Count(standing.Positions.Count, "place") }) with { Style = "line small" });

    private Sheet Roles()
    {
        var path = PageMap.Overview("roles");
        var links = desk.LinksFrom(path);
        var answers = new AnswerLines(desk, links);
        var families = Families().Where(f => f.Assemblies.SelectMany(a => a.Positions).Any(p => p.Role is not null)).ToList();
        var rows = families.SelectMany(f => f.Assemblies).SelectMany(a => a.Positions).Select(p => p.Role).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Select(role => new TableRow(null, [RoleText.Of(role), .. families.Select(f => Job(desk.Index.PositionsWith(role).Where(p => p.Family == f.Id), answers, links))]));
        var group = new TableGroup("roles", null, ["Job", .. families.Select(f => f.Name)], [.. rows], "No position has a role yet.") { Sortable = true, Look = "interchange" };
        return new Sheet(path, "table.html", "Interchange", "The same job in every family", Crumbs.Of(links), new TableView("What to fit for one job, family by family.", [group])) { Reference = "roles" };
    }

    // Places of one family that have the same answer are told together.
    private Phrase Job(IEnumerable<Position> positions, AnswerLines answers, PageLinks links) => Phrase.Of(
        positions.Select(p => (Position: p, Answer: answers.Of(p))).GroupBy(x => x.Answer.Text, StringComparer.Ordinal)
            .SelectMany(same => What(same.First().Answer, same.First().Position).Append(
                (same.Count() == 1 ? links.Position(same.First().Position.Address) : links.Assembly($"{same.First().Position.Family}/{same.First().Position.Assembly}") with { Text = Count(same.Count(), "place") })
                with { Style = "line small" })));

    private IEnumerable<object?> What(Answer answer, Position position)
    {
        if (answer.ByMachine.Count > 0)
            return answer.ByMachine.SelectMany(m => new object?[] { m, new Link(null, "", "line") });
        if (answer.Best is { } best)
            return [best.Number, " ", answer.Standing, new Link(null, "in the house: " + answer.InHouse, "line")];
        return [desk.AnswerAt(position.Address).Disputed.Count > 0 ? "disputed" : "no answer"];
    }

    private IEnumerable<Family> Families() => RecordIndex.InUse(desk.Library.Families.Values).OrderBy(f => f.Name, StringComparer.Ordinal).ThenBy(f => f.Id, StringComparer.Ordinal);

    private static IEnumerable<Link> OtherPages(PartKind kind, int count, int current, PageLinks links) =>
        Enumerable.Range(1, count).Where(n => count > 1 && n != current + 1)
            .Select(n => new Link(links.Href(PageMap.Kind(kind, n)), string.Create(CultureInfo.InvariantCulture, $"page {n}")));

    private string SizesOf(Part part) =>
        string.Join(" × ", part.Kind.Deciding.Take(3).Select(a => desk.Fits.Sizes.Of(part.Id).TryGetValue(a, out var known) ? desk.Sizes.Split(a, known.Size).Value : "?"));

    private static string Count(int count, string noun) => string.Create(CultureInfo.InvariantCulture, $"{count:#,0} {noun}{(count == 1 ? "" : "s")}");
}

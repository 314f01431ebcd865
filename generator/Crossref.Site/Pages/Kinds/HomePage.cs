using System.Globalization;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>The first page: look something up, or start from a symptom, a machine, or what is still open.</summary>
internal sealed class HomePage(Desk desk)
{
    private const int NewestFindings = 10;

    internal IEnumerable<Sheet> All()
    {
        var links = desk.LinksFrom(PageMap.Home);
        yield return new Sheet(PageMap.Home, "home.html", "First page", desk.Library.Card.Title, [], View(links)) { Reference = "first page" };
    }

    private HomeView View(PageLinks links)
    {
        var library = desk.Library;
        var machines = new MachineLines(desk, links);
        var disputes = new Disputes(desk, links).View();
        var open = RecordIndex.Sorted(library.Questions.Values).Where(q => q.IsOpen).ToList();
        return new HomeView
        {
            Symptoms = [.. RecordIndex.InUse(library.Symptoms.Values).OrderBy(s => s.Name, StringComparer.Ordinal).Select(s => links.Record(s.Id))],
            Machines = [.. RecordIndex.Ours(library.Machines.Values).Select(machines.Of)],
            Families = [.. Families(links)],
            Findings = [.. Findings(links).Take(NewestFindings)],
            Disputes = [.. disputes.Places, .. disputes.Machines, .. disputes.Comparisons],
            Questions = [.. open.OrderByDescending(q => q.Date).Select(q => links.Record(q.Id))],
            Owed = [.. new UnitViews(desk, links).Owed()],
            Counts =
            [
                Count(links, "parts", "parts", library.Parts.Count),
                new Pair("positions", Number(library.Positions.Count)),
                Count(links, "claims", "claims", library.Claims.Count),
                Count(links, "repairs", "repairs", library.Repairs.Count),
                Count(links, "sources", "sources", library.Sources.Count),
                Count(links, "disputes", "disputed", disputes.Places.Count + disputes.Machines.Count + disputes.Comparisons.Count),
                Count(links, "disputes", "contradicted", disputes.Contradicted.Count),
                Count(links, "questions", open.Count == 1 ? "open question" : "open questions", open.Count),
            ],
            Notes = [.. RecordIndex.InUse(library.Notes.Values).OrderBy(n => n.Title, StringComparer.Ordinal).Select(n => links.Record(n.Id))],
        };
    }

    private IEnumerable<FamilyLine> Families(PageLinks links) => RecordIndex.InUse(desk.Library.Families.Values)
        .OrderBy(f => f.Name, StringComparer.Ordinal)
        .Select(f => new FamilyLine(links.Family(f.Id), f.Maker, [.. f.Assemblies.Select(a => links.Assembly(a.Address))]));

    private IEnumerable<NewsLine> Findings(PageLinks links)
    {
        var claims = new ClaimLines(desk, links);
        var evidence = new EvidenceViews(desk, links);
        var repairs = new RepairLines(desk, links);
        return desk.Index.Claims.Where(c => !c.Retired && c.Verdict is not null)
            .Select(c => (c.Date, c.Id, Text: Phrase.Of(
                links.Part(c.Part.Id), " ", EvidenceViews.Says(c.Verdict!.Value), " ", claims.About(c), evidence.IsWithdrawn(c) ? " (taken back)" : null)))
            .Concat(desk.Index.Repairs.Select(r => (r.Date, r.Id, Text: repairs.Told(r))))
            .OrderByDescending(f => f.Date).ThenByDescending(f => f.Id, StringComparer.Ordinal)
            .Select(f => new NewsLine(f.Date.ToString(), links.Record(f.Id), f.Text));
    }

    private static Pair Count(PageLinks links, string overview, string word, int count) => new(word, links.Overview(overview, Number(count)));

    private static string Number(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}

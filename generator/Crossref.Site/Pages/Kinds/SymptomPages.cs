using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A symptom's page: checks before suspects, then what fits each suspect and whether it is in the house.</summary>
internal sealed class SymptomPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => RecordIndex.Sorted(desk.Library.Symptoms.Values).Select(Of);

    internal static string SideText(Side side) => side switch
    {
        Side.BeforeFixing => "Before fixing",
        Side.Fixing => "In the fixing unit",
        Side.AfterFixing => "After fixing",
        Side.Mechanical => "In the drive or the transport",
        _ => "Anywhere",
    };

    private Sheet Of(Symptom symptom)
    {
        var path = desk.Map.Of(symptom)!.Value.Path;
        var links = desk.LinksFrom(path);
        var view = new SymptomView
        {
            Where = SideText(symptom.Where),
            Checks = symptom.Checks,
            Suspects = [.. symptom.Suspects.Select((role, i) => Suspect(role.Id, i + 1, links))],
            Repairs = [.. desk.Index.RepairsFor(symptom.Id).Select(r => new RepairLines(desk, links).Of(r))],
            Notes = [.. desk.Index.NotesAbout(symptom.Id).Select(n => links.Record(n.Id))],
            Note = symptom.Note,
        };
        return new Sheet(path, "symptom.html", "Symptom", symptom.Name, Crumbs.Of(links, links.Overview("symptoms", "Symptoms")), view) { Reference = symptom.Id };
    }

    private SuspectView Suspect(string role, int rank, PageLinks links)
    {
        var answers = new AnswerLines(desk, links);
        var families = desk.Index.PositionsWith(role).GroupBy(p => p.Family, StringComparer.Ordinal)
            .Select(g => new SuspectFamily(links.Family(g.Key), [.. Rows(g.Select(answers.Of))]));
        return new SuspectView(rank, RoleText.Of(role), [.. families]);
    }

    // Both sides of a roller mostly have one answer: one line for both.
    private static IEnumerable<SuspectRow> Rows(IEnumerable<Answer> answers) => answers
        .GroupBy(a => a.Text, StringComparer.Ordinal).Select(same => new SuspectRow([.. same.Select(a => a.Position)], same.First()));
}

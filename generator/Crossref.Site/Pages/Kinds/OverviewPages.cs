using System.Globalization;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>Overviews that are plain tables: parts, machines, symptoms, notes, repairs, sources.</summary>
internal sealed class OverviewPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => [Parts(), Machines(), Symptoms(), Notes(), Repairs(), Sources()];

    private Sheet Parts()
    {
        var links = desk.LinksFrom(PageMap.Overview("parts"));
        var rows = PartKind.All
            .Select(k => (Kind: k, Parts: PartsOf(k).ToList())).Where(x => x.Parts.Count > 0)
            .Select(x => Row(links.Kind(x.Kind), Number(x.Parts.Count), Attributes(x.Kind.Deciding), Attributes(x.Kind.MustMatch), x.Kind.Safety ? "yes" : ""));
        return Table(
            "parts", "Parts", "Part numbers are quickest to look up. Each kind has a table of what interchanges between the families:",
            new TableGroup("kinds", null, ["Kind", "Parts", "What decides an interchange", "Must match", "Safety"], [.. rows], "There are no parts yet."));
    }

    private Sheet Machines()
    {
        var links = desk.LinksFrom(PageMap.Overview("machines"));
        var lines = new MachineLines(desk, links);
        var machines = RecordIndex.Sorted(desk.Library.Machines.Values).Select(lines.Of).Select(m => Row(m.Machine, m.Family, m.Facts, m.Reading));
        var families = RecordIndex.InUse(desk.Library.Families.Values).OrderBy(f => f.Name, StringComparer.Ordinal)
            .Select(f => Row(
                links.Family(f.Id), f.Maker, string.Join(", ", f.Models.Select(m => m.Name)), Phrase.Joined(", ", f.Assemblies.Select(a => links.Assembly(a.Address)))));
        return Table(
            "machines", "Machines", null,
            new TableGroup("shop", "In the shop", ["Machine", "Family", "Plate", "Latest reading"], [.. machines], "No machine is on record."),
            new TableGroup("families", "Families", ["Family", "Maker", "Models", "Assemblies"], [.. families], "No family is on record."));
    }

    private Sheet Symptoms()
    {
        var links = desk.LinksFrom(PageMap.Overview("symptoms"));
        var groups = Enum.GetValues<Side>()
            .Select(side => (Side: side, Found: RecordIndex.Sorted(desk.Library.Symptoms.Values).Where(s => s.Where == side).OrderBy(s => s.Name, StringComparer.Ordinal).ToList()))
            .Where(x => x.Found.Count > 0)
            .Select(x => new TableGroup(
                Words.Of(x.Side), SymptomPages.SideText(x.Side), ["Symptom", "Check first", "Suspects"],
                [.. x.Found.Select(s => Row(links.Record(s.Id), s.Checks is [var first, ..] ? first : "", string.Join(", ", s.Suspects.Select(r => RoleText.Of(r.Id)))))], ""));
        return Table("symptoms", "Symptoms", "Start from what the machine does wrong.", [.. groups]);
    }

    private Sheet Notes()
    {
        var links = desk.LinksFrom(PageMap.Overview("notes"));
        var rows = RecordIndex.InUse(desk.Library.Notes.Values).OrderBy(n => n.Title, StringComparer.Ordinal).ThenBy(n => n.Id, StringComparer.Ordinal)
            .Select(n => Row(links.Record(n.Id), Phrase.Joined(", ", n.About.Select(a => links.Record(a.Id)))));
        return Table("notes", "Notes", null, new TableGroup("notes", null, ["Note", "About"], [.. rows], "There are no notes yet."));
    }

    private Sheet Repairs()
    {
        var links = desk.LinksFrom(PageMap.Overview("repairs"));
        var lines = new RepairLines(desk, links);
        var rows = desk.Index.Repairs.Select(r => (Repair: r, Line: lines.Of(r)))
            .Select(x => Row(x.Line.Repair, x.Line.Date, x.Line.On, x.Repair.Symptom is { } s ? links.Record(s.Id) : "", x.Line.Story, x.Line.Outcome));
        return Table(
            "repairs", "Repairs", null,
            new TableGroup("repairs", null, ["Repair", "Date", "On", "Symptom", "What happened", "Outcome"], [.. rows], "No repair is on record."));
    }

    private Sheet Sources()
    {
        var links = desk.LinksFrom(PageMap.Overview("sources"));
        var rows = RecordIndex.Sorted(desk.Library.Sources.Values).OrderByDescending(s => s.Documents).ThenBy(s => s.Title, StringComparer.Ordinal)
            .Select(s => Row(
                links.Record(s.Id), Words.Of(s.Kind).Replace('-', ' '), s.Dated.ToString(), s.Kept ?? "", s.Documents ? "yes" : "no",
                Number(desk.Index.ClaimsFrom(s.Id).Count() + desk.Index.PositionsFrom(s.Id).Count() + desk.Index.PartsFrom(s.Id).Count())));
        return Table(
            "sources", "Sources", "Where everything here was read, measured or heard.",
            new TableGroup("sources", null, ["Source", "Type", "Dated", "Kept", "Documents", "Rests on it"], [.. rows], "No source is on record."));
    }

    private Sheet Table(string name, string title, string? lede, params IReadOnlyList<TableGroup> groups)
    {
        var path = PageMap.Overview(name);
        return new Sheet(path, "table.html", "Overview", title, Crumbs.Of(desk.LinksFrom(path)), new TableView(lede, groups)) { Reference = name };
    }

    private IEnumerable<Part> PartsOf(PartKind kind) => RecordIndex.Sorted(desk.Library.Parts.Values).Where(p => p.Kind == kind);

    private static string Attributes(IReadOnlyList<string> attributes) => string.Join(", ", attributes.Select(SizeText.NameOf));

    private static TableRow Row(params object?[] cells) => new(null, cells);

    private static string Number(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}

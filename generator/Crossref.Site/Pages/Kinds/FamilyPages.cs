using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A family's page: its models, its assemblies, the shop's machines.</summary>
internal sealed class FamilyPages(Desk desk)
{
    internal IEnumerable<Sheet> All() =>
        RecordIndex.Sorted(desk.Library.Families.Values).Select(Of);

    private Sheet Of(Family family)
    {
        var path = desk.Map.Of(family)!.Value.Path;
        var links = desk.LinksFrom(path);
        var view = new FamilyView
        {
            Maker = family.Maker,
            Models = [.. family.Models.Select(m => new Pair(m.Name, m.Mains is { } volts ? CandidateViews.Number(volts) + " V" : "mains not on record"))],
            Assemblies = [.. family.Assemblies.Select(a => AssemblyLines.Of(desk, links, a))],
            Machines = [.. desk.MachinesOf(family.Id).Select(new MachineLines(desk, links).Of)],
            Notes = [.. desk.Index.NotesAbout(family.Id).Select(n => links.Record(n.Id))],
            Note = family.Note,
        };
        return new Sheet(path, "family.html", "Family", family.Name, Crumbs.Of(links, links.Overview("machines", "Machines")), view) { Reference = family.Id };
    }
}

using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>An assembly's page: what to know before it is opened, and every position with its answer.</summary>
internal sealed class AssemblyPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => desk.Library.Assemblies.Values.OrderBy(a => a.Address, StringComparer.Ordinal).Select(Of);

    private Sheet Of(Assembly assembly)
    {
        var path = PageMap.Of(assembly);
        var links = desk.LinksFrom(path);
        var family = desk.Library.Families[assembly.Family];
        return new Sheet(path, "assembly.html", "Assembly", $"{assembly.Name}, {family.Name}", Crumbs.Of(links, links.Family(family.Id)), View(assembly, links))
        {
            Reference = assembly.Address,
        };
    }

    private AssemblyView View(Assembly assembly, PageLinks links) => new()
    {
        Bench = BenchViews.Of(links, assembly),
        Positions = [.. assembly.Positions.Select(p => Row(p, links))],
        Chains = [.. assembly.Positions.Where(p => p.DamagesNext.Count > 0).Select(p => Phrase.Joined(" → ", BenchViews.Chain(desk, p).Prepend(p.Address).Select(a => links.Position(a))))],
        Fragile = [.. Fragile(assembly, links)],
        Units = [.. RecordIndex.Ours(desk.Library.Units.Values).Where(u => u.Assembly.Id == assembly.Address).Select(new UnitViews(desk, links).Of)],
        Notes = [.. Notes(assembly).Select(n => links.Record(n.Id))],
        Repairs = [.. desk.Index.RepairsInside(assembly.Address).Select(r => new RepairLines(desk, links).Of(r))],
        Note = assembly.Note,
    };

    private PositionRow Row(Position position, PageLinks links)
    {
        var answer = new AnswerLines(desk, links).Of(position);
        return new PositionRow
        {
            Answer = answer,
            Kind = CandidateViews.KindWord(position.Kind),
            Role = position.Role,
            Quantity = position.Quantity,
            Listed = Phrase.Joined(", ", position.Listed.Select(l => links.Part(l.Part.Id))),
            IsListedBest = answer.ByMachine.Count == 0 && position.Listed is [var only] && links.Part(only.Part.Id) == answer.Best?.Number,
            Orientation = OrientationText.Of(position.Orientation),
            DamagesNext = [.. position.DamagesNext.Select(d => links.Position(d.Id))],
            BreaksWhenOpened = [.. position.BreaksWhenOpened.Select(b => links.Position(b.Id))],
        };
    }

    // What is fragile first: the same clip may stand in the way of several positions.
    private static IEnumerable<Phrase> Fragile(Assembly assembly, PageLinks links) => assembly.Positions
        .SelectMany(p => p.BreaksWhenOpened.Select(b => (Fragile: b.Id, Reached: p.Address)))
        .GroupBy(x => x.Fragile, StringComparer.Ordinal)
        .Select(g => Phrase.Of(links.Position(g.Key), " while reaching ", Phrase.Joined(", ", g.Select(x => links.Position(x.Reached)))));

    private IEnumerable<Note> Notes(Assembly assembly) => desk.Index.NotesAbout(assembly.Address)
        .Concat(assembly.Positions.SelectMany(p => desk.Index.NotesAbout(p.Address)))
        .DistinctBy(n => n.Id, StringComparer.Ordinal).OrderBy(n => n.Title, StringComparer.Ordinal);
}

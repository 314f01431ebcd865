using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A repair's page: its story, and what it shows.</summary>
internal sealed class RepairPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => RecordIndex.Sorted(desk.Library.Repairs.Values).Select(Of);

    private Sheet Of(Repair repair)
    {
        var path = desk.Map.Of(repair)!.Value.Path;
        var links = desk.LinksFrom(path);
        var on = repair.Machine is { } machine ? links.Machine(machine.Id).Text : repair.Unit?.Id;
        var title = repair.Symptom is { } symptom ? $"{links.Record(symptom.Id).Text}, {on}" : $"Repair of {on}";
        var crumbs = Crumbs.Of(links, links.Overview("repairs", "Repairs"));
        return new Sheet(path, "repair.html", "Repair", title, crumbs, View(repair, links)) { Reference = repair.Id };
    }

    private RepairView View(Repair repair, PageLinks links) => new()
    {
        Facts = [.. Facts(repair, links)],
        Found = [.. repair.Found.Select(f => Phrase.Of(links.Position(f.Position.Id), ": ", f.Condition, f.Note is { } note ? ". " + note : null))],
        Removed = [.. repair.Removed.Select(r => Phrase.Of(
            links.Position(r.Position.Id), ": ", Count(r.Quantity), links.Part(r.Part.Id), r.Condition is { } c ? ", " + c : null,
            r.To is { } to ? Phrase.Of(" → ", links.Record(to.Id)) : " → scrap"))],
        Fitted = [.. repair.Fitted.Select(f => Phrase.Of(
            links.Position(f.Position.Id), ": ", Count(f.Quantity), links.Part(f.Part.Id),
            f.From is { } from ? Phrase.Of(" ← ", links.Record(from.Id)) : " ← new",
            OrientationText.Of(f.Orientation) is { } way ? ", " + way : null, f.Change is { } change ? ", changed: " + change : null))],
        Swapped = repair.Swapped is { } swap
            ? Phrase.Of(links.Assembly(swap.Assembly.Id), ": ", Unit(swap.Out, links), " out, ", Unit(swap.In, links), " in")
            : null,
        Outcome = RepairLines.OutcomeText(repair.Outcome),
        Evidence = [.. Evidence(repair, links)],
        Claims = [.. desk.Index.ClaimsFrom(repair.Id).Select(new ClaimLines(desk, links).Of)],
        Pictures = desk.PicturesFor(links, repair.Pictures),
        Note = repair.Note,
    };

    private static IEnumerable<Pair> Facts(Repair repair, PageLinks links)
    {
        yield return new Pair("Date", repair.Date.ToString());
        if (repair.Machine is { } machine) yield return new Pair("Machine", links.Machine(machine.Id));
        if (repair.Unit is { } unit) yield return new Pair("Unit, at the bench", links.Record(unit.Id));
        if (repair.Counter is { } counter) yield return new Pair("Counter", counter.ToString());
        if (repair.Symptom is { } symptom) yield return new Pair("Began with", links.Record(symptom.Id));
        if (repair.Assembly is { } assembly) yield return new Pair("Opened", links.Assembly(assembly.Id));
        yield return new Pair("By", repair.By ?? "not on record");
        yield return new Pair("Outcome", RepairLines.OutcomeText(repair.Outcome));
        yield return new Pair("Neighbours at the recheck", repair.NeighboursDamaged switch { true => "damaged", false => "undamaged", null => "nobody looked yet" });
    }

    private IEnumerable<EvidenceLine> Evidence(Repair repair, PageLinks links)
    {
        var parts = new CandidateViews(desk, links);
        var evidence = new EvidenceViews(desk, links);
        foreach (var fitting in repair.Fitted)
        {
            if (!desk.Library.Positions.TryGetValue(fitting.Position.Id, out var position)) continue;
            var fact = desk.Fits.FactsFor(null).Direct(fitting.Part.Id, position);
            foreach (var statement in fact.Positives.Where(s => s.Kind == StatementKind.Repair && s.Source == repair.Id))
                yield return new EvidenceLine(parts.Part(fitting.Part.Id), links.Position(position.Address), evidence.Of(statement));
        }
    }

    private static string? Count(int? quantity) => quantity is { } n and not 1 ? $"{n} × " : null;

    private static Link Unit(Ref? unit, PageLinks links) => unit is { } u ? links.Record(u.Id) : new Link(null, "a unit without a record");
}

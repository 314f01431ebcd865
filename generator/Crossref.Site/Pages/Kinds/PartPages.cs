using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Pages.Drawing;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A part's page: its numbers, its sizes, where it fits, what may stand in for it, what was found.</summary>
internal sealed class PartPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => RecordIndex.Sorted(desk.Library.Parts.Values).Select(Of);

    private Sheet Of(Part part)
    {
        var path = desk.Map.Of(part)!.Value.Path;
        var links = desk.LinksFrom(path);
        var crumbs = Crumbs.Of(links, links.Overview("parts", "Parts"), links.Kind(part.Kind));
        return new Sheet(path, "part.html", "Part", $"{part.CurrentNumber} {part.Name}", crumbs, View(part, links))
        {
            Reference = part.Id,
        };
    }

    private PartView View(Part part, PageLinks links)
    {
        var views = new CandidateViews(desk, links);
        var where = desk.Where.Of(part.Id);
        var standIns = new StandInRows(desk, links);
        return new PartView
        {
            Numbers = [.. PartFacts.Numbers(part, links)],
            Sketch = Sketches.Of(SizeBook.Filled(part), desk.Sizes),
            Unit = desk.Sizes.Unit,
            Sizes = [.. PartFacts.Sizes(part, desk.Sizes)],
            Beside = new SizeTables(desk, views).Of(part, where),
            Facts = [.. PartFacts.Of(part, links)],
            Safety = part.IsSafety,
            Fits = [.. where.Fits.Where(f => f.Candidate.Accepted).Select(f => Row(f, links))],
            Stands = [.. where.Fits.Where(f => !f.Candidate.Accepted && !f.Candidate.IsLead).Select(f => Row(f, links))],
            Leads = [.. where.Fits.Where(f => f.Candidate.IsLead).Select(f => Row(f, links))],
            Refused = [.. where.Refused.Select(r => Row(r, links))],
            StandIns = [.. where.StandIns.Where(s => s.Stands).Select(s => standIns.Of(s, s.Part, standIns.Where(s)))],
            NotStandIns = [.. where.StandIns.Where(s => !s.Stands).Select(s => standIns.Of(s, s.Part, standIns.Where(s)))],
            StandsInFor = [.. where.StandsInFor.Where(s => s.Stands).Select(s => standIns.Of(s, s.InsteadOf, standIns.Where(s)))],
            StandsNotInFor = [.. where.StandsInFor.Where(s => !s.Stands).Select(s => standIns.Of(s, s.InsteadOf, standIns.Where(s)))],
            Glance = [.. Glance(part, where, views, links)],
            Stock = views.Stock(part.Id),
            OnOrder = [.. OnOrder(part, links)],
            Contains = [.. part.Contains.Select(k => Phrase.Of($"{k.Quantity} × ", links.Part(k.Part.Id), " ", views.Part(k.Part.Id).Name))],
            Kits = [.. desk.Index.KitsWith(part.Id).Select(k => links.Part(k.Id))],
            Claims = [.. desk.Index.ClaimsOf(part.Id).Select(new ClaimLines(desk, links).Of)],
            Repairs = [.. desk.Index.RepairsOf(part.Id).Select(r => new RepairLines(desk, links).Of(r))],
            Notes = [.. desk.Index.NotesAbout(part.Id).Select(n => links.Record(n.Id))],
            Questions = [.. desk.Index.QuestionsAbout(part.Id).Where(q => q.IsOpen).Select(q => links.Record(q.Id))],
            Pictures = desk.PicturesFor(links, part.Pictures),
            Note = part.Note,
        };
    }

    private IEnumerable<Pair> Glance(Part part, WhereAnswer where, CandidateViews views, PageLinks links)
    {
        yield return new Pair("In the house", views.StockText(part.Id));
        yield return new Pair("An answer in", Reach(where));
        if (part.SupersededBy is { } next) yield return new Pair("The maker now sends", links.Part(next.Id));
        if (part.Handed) yield return new Pair("Handed", "mind which way round");
        if (CandidateViews.OrderTerms(part) is { } terms) yield return new Pair("An order takes", terms);
    }

    private string Reach(WhereAnswer where)
    {
        var places = where.Fits.Where(f => f.Candidate.Accepted).ToList();
        if (places.Count == 0) return where.Fits.SelectMany(MachinesFor).Any() ? "some machines only" : "no place yet";
        var families = places.Select(f => desk.Library.Positions[f.Position].Family).Distinct(StringComparer.Ordinal).Count();
        return $"{places.Count} {(places.Count == 1 ? "place" : "places")}, {families} {(families == 1 ? "family" : "families")}";
    }

    private WhereRow Row(WhereFit fit, PageLinks links) =>
        Row(fit.Position, links, StandingWords.Of(links, fit.Candidate), fit.Candidate.Reason, CandidateViews.Caveats(fit.Candidate)) with
        {
            Machines = [.. MachinesFor(fit).Select(m => links.Machine(m.Id))],
        };

    // On record without being an answer for any machine: for one of which more is known it may be.
    private IEnumerable<Machine> MachinesFor(WhereFit fit) => fit.Candidate is { Accepted: false, IsLead: false, Conditions.Count: > 0 }
        ? desk.MachinesOf(desk.Library.Positions[fit.Position].Family)
            .Where(m => desk.Fits.At(fit.Position, m.Id).Candidates.Any(c => c.Accepted && c.Part == fit.Candidate.Part))
        : [];

    private WhereRow Row(WhereRefusal refusal, PageLinks links) => Row(
        refusal.Position, links,
        StandingWords.OfRefusal(links, refusal.Disputed),
        refusal.Refusal.Reason, "");

    private WhereRow Row(string address, PageLinks links, Link standing, string reason, string checkFirst)
    {
        var position = desk.Library.Positions[address];
        var assembly = desk.Library.Assemblies[$"{position.Family}/{position.Assembly}"];
        return new WhereRow(links.Position(address), links.Family(position.Family), assembly.Name, standing, reason, checkFirst, []);
    }

    private IEnumerable<Phrase> OnOrder(Part part, PageLinks links) => RecordIndex.Ours(desk.Library.Orders.Values)
        .Where(o => o.Part.Id == part.Id && o.Received is null).OrderBy(o => o.Expected).ThenBy(o => o.Id, StringComparer.Ordinal)
        .Select(o => Phrase.Of(
            $"{o.Quantity} on order, ", links.Record(o.Id), o.Expected.IsUnknown ? ", no date" : $", expected {o.Expected}",
            o.For is { } target ? Phrase.Of(", for ", links.Record(target.Id)) : null));
}

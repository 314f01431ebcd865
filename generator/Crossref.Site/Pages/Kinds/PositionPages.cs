using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A position's page: what fits here, how do we know, and what to watch.</summary>
internal sealed class PositionPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => desk.Library.Positions.Values.OrderBy(p => p.Address, StringComparer.Ordinal).Select(Of);

    private Sheet Of(Position position)
    {
        var path = PageMap.Of(position);
        var links = desk.LinksFrom(path);
        return new Sheet(path, "position.html", "Position", position.Name, Crumbs.Of(links, position), View(position, links))
        {
            Reference = position.Address,
            Scripts = RecordPage.Here,
        };
    }

    private PositionView View(Position position, PageLinks links)
    {
        var answer = desk.AnswerAt(position.Address);
        var views = new CandidateViews(desk, links);
        var accepted = answer.Candidates.Where(c => c.Accepted).ToList();
        var machines = new MachineAnswers(desk, links).At(position, answer);
        return new PositionView
        {
            Facts = Facts(position, links),
            Safety = answer.Safety,
            Orientation = OrientationText.Of(position.Orientation) ?? Unrecorded(position),
            Verdict = Verdict(answer, accepted, machines),
            WouldChange = accepted.Count > 0 ? [] : WouldChange(answer, machines),
            Best = accepted.Count > 0 ? views.Of(accepted[0], answer.Safety) : null,
            InShort = [.. accepted.Skip(1).OrderBy(c => views.InHouse(c.Part) == 0).Select(c => Phrase.Of(
                links.Part(c.Part), " ", StandingWords.Of(links, c), $" in the house: {views.StockText(c.Part)}", CandidateViews.Warning(c)))],
            Others = [.. accepted.Skip(1).Select(c => views.Of(c, answer.Safety))],
            Standing = [.. answer.Candidates.Where(c => !c.Accepted && !c.IsLead).Select(c => views.Of(c, answer.Safety))],
            Leads = [.. answer.Candidates.Where(c => c.IsLead).Select(c => views.Of(c, answer.Safety))],
            Disputed = [.. answer.Disputed.Select(r => views.Of(r, true))],
            AllDisputes = links.Overview("disputes", "All disputes"),
            RuledOut = [.. answer.RuledOut.Select(r => views.Of(r, false))],
            Machines = machines,
            SameInAll = machines.All(m => m is { Same: true, Best: not null }),
            Evidence = new EvidenceViews(desk, links).At(answer),
            Sizes = new SizeTables(desk, views).Of(position, answer),
            Bench = BenchViews.Of(desk, links, position),
            Notes = [.. desk.Index.NotesAbout(position.Address).Select(n => links.Record(n.Id))],
            Questions = [.. desk.Index.QuestionsAbout(position.Address).Where(q => q.IsOpen).Select(q => links.Record(q.Id))],
            Repairs = [.. desk.Index.RepairsAt(position.Address).Select(r => new RepairLines(desk, links).Of(r, position.Address))],
            Pictures = desk.PicturesFor(links, position.Pictures),
            Note = position.Note,
            Address = position.Address,
            Record = new Link($"{links.Href(RecordPage.Path)}#at={position.Address}{(desk.Library.MachinesOf(position.Family).ToList() is [var only] ? "&machine=" + only.Id : "")}", "Record what you found here"),
        };
    }

    private string? Unrecorded(Position position) =>
        position.Listed.Any(l => desk.Library.Parts.GetValueOrDefault(l.Part.Id) is { Handed: true })
            ? "not on record, and it matters: take a photo before it comes out"
            : null;

    private List<Pair> Facts(Position position, PageLinks links)
    {
        var facts = new List<Pair>
        {
            new("Takes", $"{position.Quantity} × {CandidateViews.KindWord(position.Kind)}"),
            new("The maker lists", Phrase.Of(Listed(position, links))),
        };
        if (position.Source is { } source)
            facts.Add(new Pair("Read in", Phrase.Of(links.Record(source.Id), position.Locator is { } locator ? ", " + locator : null)));
        if (position.Role is { } role) facts.Add(new Pair("Job", RoleText.Of(role)));
        if (position.Diameter is { } diameter) facts.Add(new Pair("Diameter", desk.Sizes.Length(diameter.Value)));
        return facts;
    }

    private static IEnumerable<object?> Listed(Position position, PageLinks links)
    {
        if (position.Listed.Count == 0) yield return "nothing on record";
        for (var i = 0; i < position.Listed.Count; i++)
        {
            if (i > 0) yield return "; ";
            yield return links.Part(position.Listed[i].Part.Id);
            var terms = Core.Evidence.Term.Of(position.Listed[i].OnlyIf);
            if (terms.Count > 0) yield return $" ({string.Join(", ", terms)})";
        }
    }

    private static string Verdict(FitsAnswer answer, List<Candidate> accepted, IReadOnlyList<MachineAnswer> machines)
    {
        if (accepted.Count > 0) return accepted.Count == 1 ? "Nothing else is accepted here." : "";
        if (machines.Any(m => m.Best is not null)) return "It depends on the machine.";
        return answer.Safety ? "No part is accepted here: the maker's document names none." : "Nothing on record is good enough to be an answer here.";
    }

    private List<string> WouldChange(FitsAnswer answer, IReadOnlyList<MachineAnswer> machines)
    {
        var ways = new List<string>();
        if (machines.Any(m => m.Best is not null)) ways.Add("Knowing the machine: its model, its serial and its mains.");
        if (answer.Safety)
        {
            ways.Add("A list, manual or bulletin of the maker that names a part for this place and this serial. Running, measuring or hearsay never will.");
            return ways;
        }
        var needed = Words.Of(desk.Library.Card.AcceptFrom);
        if (answer.Candidates.FirstOrDefault(c => !c.IsLead) is { } next)
            ways.Add($"{desk.Wording.Part(next.Part)} stands as {next.Standing}. Fitted, and recorded as {needed} or better with a source, it is an answer.");
        else if (answer.Candidates.Count > 0)
            ways.Add($"Trying one of the leads below and recording the finding as {needed} or better, with a source.");
        else
            ways.Add($"A maker's list that names a part, or a finding that is {needed} or better, with a source.");
        if (answer.Disputed.Count > 0) ways.Add("Settling the dispute below: remeasure, or find what tells the two apart.");
        return ways;
    }
}

using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Everything in the library that has a yes and a no: what is disputed, and what stands all the same.</summary>
internal sealed class Disputes(Desk desk, PageLinks links)
{
    internal DisputesView View() => new()
    {
        Places = [.. desk.Answers.SelectMany(a => a.Disputed.Select(d => new DisputeView(
            At(d.Part, desk.Library.Positions[a.Position], "disputed", Family(a.Position)), d.Reason)))],
        Machines = [.. Machines()],
        Comparisons = [.. StandIns(FactState.Disputed)],
        Contradicted = [.. Contradicted().Concat(StandIns(FactState.Stands))],
    };

    // Without a machine a conditional no is only an exception; in a machine whose plate answers the condition it counts.
    private IEnumerable<DisputeView> Machines() =>
        from pair in Denied()
        where desk.Fits.FactsFor(null).Direct(pair.Part, pair.Position).State != FactState.Disputed
        from machine in desk.MachinesOf(pair.Position.Family)
        let fact = desk.Fits.FactsFor(machine.Id).Direct(pair.Part, pair.Position)
        where fact.State == FactState.Disputed
        select new DisputeView(At(pair.Part, pair.Position, null, links.Record(machine.Id)), desk.Wording.Of(fact));

    // A size that must match has the last word: what it rules out does not stand, whatever is claimed.
    private IEnumerable<DisputeView> Contradicted() =>
        from pair in Denied()
        let fact = desk.Fits.FactsFor(null).Direct(pair.Part, pair.Position)
        where fact is { State: FactState.Stands, Negatives.Count: > 0 }
        where desk.AnswerAt(pair.Position.Address).RuledOut.All(r => r.Part != pair.Part)
        select new DisputeView(At(pair.Part, pair.Position, null, Family(pair.Position.Address)), desk.Wording.Of(fact));

    private IEnumerable<(string Part, Position Position)> Denied() =>
        from position in desk.Library.Positions.Values.OrderBy(p => p.Address, StringComparer.Ordinal)
        from part in desk.Fits.Book.PartsAt(position.Address)
        where desk.Fits.Book.Direct(part, position.Address).Any(s => s.Verdict == Verdict.DoesNotFit)
        select (part, position);

    private IEnumerable<DisputeView> StandIns(FactState state) =>
        from part in RecordIndex.Sorted(desk.Library.Parts.Values)
        from standIn in desk.Where.Of(part.Id).StandsInFor
        where standIn.Fact.State == state && standIn.Fact.Negatives.Count > 0
        select new DisputeView(Instead(standIn), standIn.Reason);

    private Phrase Instead(StandIn standIn) => Phrase.Of(
        links.Part(standIn.Part), " in place of ", links.Part(standIn.InsteadOf), " ", new StandInRows(desk, links).Where(standIn));

    private Phrase At(string part, Position position, string? section, Link where)
    {
        var place = links.Position(position.Address);
        return Phrase.Of(links.Part(part), " at ", section is null ? place : place with { Href = $"{place.Href}#{section}" }, ", ", where);
    }

    private Link Family(string position) => links.Family(desk.Library.Positions[position].Family);
}

using Crossref.Core.Evidence;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Everything in the library that is disputed.</summary>
internal sealed class Disputes(Desk desk, PageLinks links)
{
    private readonly CandidateViews _views = new(desk, links);

    internal IEnumerable<DisputeView> Places() => desk.Answers.SelectMany(a => a.Disputed.Select(d => new DisputeView(
        _views.Part(d.Part), links.Position(a.Position), links.Family(desk.Library.Positions[a.Position].Family), d.Reason)));

    internal IEnumerable<StandInRow> Comparisons()
    {
        var rows = new StandInRows(desk, links);
        return RecordIndex.Sorted(desk.Library.Parts.Values)
            .SelectMany(p => desk.Where.Of(p.Id).StandsInFor)
            .Where(s => s.Fact.State == FactState.Disputed)
            .Select(s => rows.Of(s, s.Part, Phrase.Of("in place of ", links.Part(s.InsteadOf), rows.Where(s))));
    }
}

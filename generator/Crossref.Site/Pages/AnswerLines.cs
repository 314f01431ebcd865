using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages;

/// <summary>Positions in a list, each with its answer for any machine.</summary>
internal sealed class AnswerLines(Desk desk, PageLinks links)
{
    private readonly CandidateViews _views = new(desk, links);

    internal Answer Of(Position position)
    {
        var answer = desk.AnswerAt(position.Address);
        var link = links.Position(position.Address);
        if (answer.Candidates.FirstOrDefault(c => c.Accepted) is not { } best) return new Answer(link, null, null, 0, WithoutOne(position), answer.Safety);
        return new Answer(
            link, _views.Part(best.Part), StandingWords.Of(links, best), _views.InHouse(best.Part), string.Join("; ", best.Conditions), answer.Safety);
    }

    // What depends on the machine is answered on the position's own page, machine by machine.
    private string WithoutOne(Position position) =>
        desk.AnswerAt(position.Address).Candidates.Any(c => c.Weakest == Basis.Documented && !c.IsLead) ? "depends on the machine" : "";
}

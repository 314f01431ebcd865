using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Positions in a list, each with its answer for any machine, and for each machine where it depends on that.</summary>
internal sealed class AnswerLines(Desk desk, PageLinks links)
{
    private readonly CandidateViews _views = new(desk, links);

    internal Answer Of(Position position)
    {
        var any = desk.AnswerAt(position.Address);
        var best = any.Candidates.FirstOrDefault(c => c.Accepted);
        var depends = best is null ? any.Candidates.Any(c => !c.IsLead && c.Conditions.Count > 0) : best.Conditions.Count > 0;
        var answer = new Answer
        {
            Position = links.Position(position.Address),
            Safety = any.Safety,
            ByMachine = depends ? [.. desk.MachinesOf(position.Family).Select(m => ForMachine(m, position))] : [],
        };
        return best is null
            ? answer
            : answer with
            {
                Best = _views.Part(best.Part),
                Standing = StandingWords.Of(links, best),
                InHouse = _views.StockText(best.Part),
                CheckFirst = CandidateViews.Caveats(best),
                Others = depends ? [] : [.. any.Candidates.Where(c => c.Accepted && c != best && _views.InHouse(c.Part) > 0).Select(c => Phrase.Of(
                    links.Part(c.Part), $", {c.Standing}, in the house {_views.StockText(c.Part)}", CandidateViews.Warning(c)))],
            };
    }

    private Phrase ForMachine(Machine machine, Position position)
    {
        var best = desk.Fits.At(position.Address, machine.Id).Candidates.FirstOrDefault(c => c.Accepted);
        return best is null
            ? Phrase.Of(links.Machine(machine.Id), ": no answer")
            : Phrase.Of(
                links.Machine(machine.Id), ": ", links.Part(best.Part), $", in the house {_views.StockText(best.Part)}",
                CandidateViews.Warning(best));
    }
}

using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>One part in place of another, as rows of a table.</summary>
internal sealed class StandInRows(Desk desk, PageLinks links)
{
    private readonly CandidateViews _views = new(desk, links);

    /// <summary>A row about one of the two parts.</summary>
    internal StandInRow Of(StandIn standIn, string part, Phrase where) => new()
    {
        Part = _views.Part(part),
        Word = StandingWords.Link(links, standIn.Word, Look(standIn)),
        Standing = standIn.Fact.Standing is { } standing ? Words.Of(standing) : "",
        Where = where,
        Reason = standIn.Reason,
        CheckFirst = string.Join("; ", Wording.ConditionsOf(standIn.Fact)),
        Change = standIn.Fact.State == FactState.Stands ? standIn.Fact.Leading!.Change : null,
        InHouse = _views.StockText(part),
    };

    /// <summary>How far a comparison is said.</summary>
    internal Phrase Where(StandIn standIn) => standIn.Where is { } where ? Phrase.Of("in ", links.Record(where)) : Phrase.Of("anywhere");

    private static string Look(StandIn standIn) => standIn.Fact.State switch
    {
        FactState.Disputed => "disputed",
        FactState.RuledOut => "ruled-out",
        _ => "accepted",
    };
}

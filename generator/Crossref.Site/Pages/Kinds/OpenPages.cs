using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>What is still open: questions and disputes.</summary>
internal sealed class OpenPages(Desk desk)
{
    internal IEnumerable<Sheet> All() => [Questions(), Disputed()];

    private Sheet Questions()
    {
        var path = PageMap.Overview("questions");
        var links = desk.LinksFrom(path);
        var questions = RecordIndex.InUse(desk.Library.Questions.Values).OrderByDescending(q => q.Date).ThenBy(q => q.Id, StringComparer.Ordinal)
            .ToLookup(q => q.IsOpen, q => Of(q, links));
        var view = new QuestionsView([.. questions[true]], [.. questions[false]]);
        return new Sheet(path, "questions.html", "Questions", "Questions", Crumbs.Of(links, links.Overview("disputes", "Disputes")), view) { Reference = "questions" };
    }

    private Sheet Disputed()
    {
        var path = PageMap.Overview("disputes");
        var links = desk.LinksFrom(path);
        return new Sheet(path, "disputes.html", "Disputes", "Disputes", Crumbs.Of(links, links.Overview("questions", "Questions")), new Disputes(desk, links).View()) { Reference = "disputes" };
    }

    private static QuestionView Of(Question question, PageLinks links) => new(
        PageMap.Anchor(question.Id), question.Asks, question.Date.ToString(), [.. question.About.Select(a => links.Record(a.Id))],
        question.Answer ?? (question.IsOpen ? null : "See"), question.AnsweredBy is { } by ? links.Record(by.Id) : null);
}

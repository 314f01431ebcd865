namespace Crossref.Site.Pages.Views;

/// <summary>Open questions, then answered ones.</summary>
/// <param name="Open">Nobody knows yet.</param>
/// <param name="Answered">Somebody found out.</param>
public sealed record QuestionsView(IReadOnlyList<QuestionView> Open, IReadOnlyList<QuestionView> Answered);

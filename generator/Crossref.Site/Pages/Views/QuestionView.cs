namespace Crossref.Site.Pages.Views;

/// <summary>A question.</summary>
/// <param name="Anchor">The id of its place on the page.</param>
/// <param name="Asks">The question.</param>
/// <param name="Date">When it was asked.</param>
/// <param name="About">What it is about.</param>
/// <param name="Answer">The answer; null while it is open.</param>
/// <param name="AnsweredBy">What answers it.</param>
public sealed record QuestionView(string Anchor, string Asks, string Date, IReadOnlyList<Link> About, string? Answer, Link? AnsweredBy);

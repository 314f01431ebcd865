namespace Crossref.Site.Pages.Views;

/// <summary>Records with which the same was done.</summary>
/// <param name="Title">What was done.</param>
/// <param name="Lines">The records.</param>
public sealed record CopiesGroup(string Title, IReadOnlyList<Phrase> Lines);

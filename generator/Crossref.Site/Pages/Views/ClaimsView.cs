namespace Crossref.Site.Pages.Views;

/// <summary>A page of claims.</summary>
/// <param name="Claims">Newest first.</param>
/// <param name="Pages">All pages of claims, newest first; empty when this is the only one.</param>
/// <param name="Count">How many there are in all.</param>
public sealed record ClaimsView(IReadOnlyList<ClaimLine> Claims, IReadOnlyList<Link> Pages, int Count);

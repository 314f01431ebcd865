namespace Crossref.Site.Pages.Views;

/// <summary>Places of one family with one answer.</summary>
/// <param name="Positions">The places.</param>
/// <param name="Answer">What fits each of them.</param>
public sealed record SuspectRow(IReadOnlyList<Link> Positions, Answer Answer);

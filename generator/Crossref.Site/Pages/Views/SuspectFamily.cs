namespace Crossref.Site.Pages.Views;

/// <summary>The places of one family that do a job.</summary>
/// <param name="Family">The family.</param>
/// <param name="Rows">The places, those with one answer together.</param>
public sealed record SuspectFamily(Link Family, IReadOnlyList<SuspectRow> Rows);

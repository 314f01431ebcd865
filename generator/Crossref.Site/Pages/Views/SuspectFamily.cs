namespace Crossref.Site.Pages.Views;

/// <summary>The places of one family that do a job.</summary>
/// <param name="Family">The family.</param>
/// <param name="Answers">What fits each of them.</param>
public sealed record SuspectFamily(Link Family, IReadOnlyList<Answer> Answers);

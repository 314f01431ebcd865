namespace Crossref.Site.Pages.Views;

/// <summary>A role under suspicion and every place that does this job.</summary>
/// <param name="Rank">From 1, the most likely first.</param>
/// <param name="Role">The job.</param>
/// <param name="Families">The places, family by family.</param>
public sealed record SuspectView(int Rank, string Role, IReadOnlyList<SuspectFamily> Families);

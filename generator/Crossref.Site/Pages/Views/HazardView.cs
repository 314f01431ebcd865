namespace Crossref.Site.Pages.Views;

/// <summary>A hazard and what to do about it.</summary>
/// <param name="Name">The word, leading to the page of cautions.</param>
/// <param name="Advice">What to do.</param>
public sealed record HazardView(Link Name, string Advice);

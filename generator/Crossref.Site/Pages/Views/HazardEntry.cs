namespace Crossref.Site.Pages.Views;

/// <summary>A hazard on the page of cautions.</summary>
/// <param name="Anchor">The id of its place on the page.</param>
/// <param name="Name">The word.</param>
/// <param name="Advice">What to do.</param>
/// <param name="Assemblies">Where it applies.</param>
public sealed record HazardEntry(string Anchor, string Name, string Advice, IReadOnlyList<Link> Assemblies);

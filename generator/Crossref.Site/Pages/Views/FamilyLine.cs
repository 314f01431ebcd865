namespace Crossref.Site.Pages.Views;

/// <summary>A family in a list.</summary>
/// <param name="Family">The family.</param>
/// <param name="Maker">Who makes it.</param>
/// <param name="Assemblies">Its assemblies.</param>
public sealed record FamilyLine(Link Family, string Maker, IReadOnlyList<Link> Assemblies);

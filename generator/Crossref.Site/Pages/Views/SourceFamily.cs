namespace Crossref.Site.Pages.Views;

/// <summary>Positions of one assembly whose lists were read in a source.</summary>
/// <param name="Family">The family.</param>
/// <param name="Assembly">The assembly.</param>
/// <param name="Positions">The positions, each with the page and item.</param>
public sealed record SourceFamily(Link Family, Link Assembly, IReadOnlyList<Phrase> Positions);

namespace Crossref.Site.Pages.Views;

/// <summary>A part that is disputed or ruled out, and why.</summary>
/// <param name="Part">The part.</param>
/// <param name="Standing">The word, leading to what it means.</param>
/// <param name="Reason">Why, in a sentence.</param>
/// <param name="Stock">Where it lies in the house: worth knowing before somebody reaches for it.</param>
public sealed record RefusalView(PartLine Part, Link Standing, string Reason, IReadOnlyList<StockLine> Stock);

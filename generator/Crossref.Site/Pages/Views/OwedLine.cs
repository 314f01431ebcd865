namespace Crossref.Site.Pages.Views;

/// <summary>A position of an idle unit that must be filled.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Position">The empty position.</param>
/// <param name="Part">The part that the list names there.</param>
/// <param name="TakenBy">The repair that took it out.</param>
/// <param name="Order">The order that will fill it; null when nothing is ordered.</param>
/// <param name="Arrives">When it is expected, in words.</param>
public sealed record OwedLine(Link Unit, Link Position, Link? Part, Link? TakenBy, Link? Order, string Arrives);

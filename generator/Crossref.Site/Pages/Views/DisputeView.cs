namespace Crossref.Site.Pages.Views;

/// <summary>A part that is disputed at a position.</summary>
/// <param name="Part">The part.</param>
/// <param name="Position">The place.</param>
/// <param name="Family">The family.</param>
/// <param name="Reason">Why, in a sentence.</param>
public sealed record DisputeView(PartLine Part, Link Position, Link Family, string Reason);

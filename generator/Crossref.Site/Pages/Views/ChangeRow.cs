namespace Crossref.Site.Pages.Views;

/// <summary>A part that stands otherwise than it did.</summary>
/// <param name="Part">The part.</param>
/// <param name="Position">Where.</param>
/// <param name="Family">The family; null for a place that is no longer on record.</param>
/// <param name="Before">How it stood.</param>
/// <param name="Now">How it stands.</param>
public sealed record ChangeRow(PartLine Part, Link Position, Link? Family, string Before, string Now);

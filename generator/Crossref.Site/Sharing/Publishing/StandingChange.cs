namespace Crossref.Site.Sharing.Publishing;

/// <summary>A part that stands otherwise at a position than it did.</summary>
/// <param name="Position">The position's address.</param>
/// <param name="Part">The part's id.</param>
/// <param name="Before">The word then; "nothing" when nothing was recorded.</param>
/// <param name="Now">The word now; "nothing" when nothing is left.</param>
public sealed record StandingChange(string Position, string Part, string Before, string Now);

namespace Crossref.Site.Recording;

/// <summary>How a part stands at a position.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Position">The position's address.</param>
/// <param name="Machine">The machine asked for; null for none.</param>
/// <param name="Word">"ran", "lead", "disputed", "ruled out", or "nothing".</param>
/// <param name="Accepted">Whether it counts as an answer there.</param>
/// <param name="Reason">Why, in one plain sentence.</param>
public sealed record Standing(string Part, string Position, string? Machine, string Word, bool Accepted, string Reason);

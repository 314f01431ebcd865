namespace Crossref.Site.Pages.Views;

/// <summary>What a repair shows about a part in a place.</summary>
/// <param name="Part">The part.</param>
/// <param name="Position">The place.</param>
/// <param name="Statement">What it shows.</param>
public sealed record EvidenceLine(PartLine Part, Link Position, StatementView Statement);

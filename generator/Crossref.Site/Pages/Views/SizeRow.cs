namespace Crossref.Site.Pages.Views;

/// <summary>One part in a table that compares sizes.</summary>
/// <param name="Part">The part.</param>
/// <param name="Standing">Its standing at the position.</param>
/// <param name="Cells">Its sizes in the order of the columns.</param>
public sealed record SizeRow(PartLine Part, string Standing, IReadOnlyList<Cell> Cells);

namespace Crossref.Site.Pages.Views;

/// <summary>An overview: a table, or several under headings.</summary>
/// <param name="Lede">What it is, in a sentence; null for nothing.</param>
/// <param name="Groups">The tables.</param>
public sealed record TableView(string? Lede, IReadOnlyList<TableGroup> Groups);

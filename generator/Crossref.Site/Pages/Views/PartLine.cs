namespace Crossref.Site.Pages.Views;

/// <summary>A part in a line of text or a table: its number and its name.</summary>
/// <param name="Number">The number one asks for.</param>
/// <param name="Name">What it is.</param>
/// <param name="Maker">Who makes it; null when nobody knows.</param>
public sealed record PartLine(Link Number, string Name, string? Maker);

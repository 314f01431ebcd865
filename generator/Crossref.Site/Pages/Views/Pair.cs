namespace Crossref.Site.Pages.Views;

/// <summary>A word and what stands beside it.</summary>
/// <param name="Name">The word.</param>
/// <param name="Value">Text, or a link.</param>
public sealed record Pair(string Name, object? Value);

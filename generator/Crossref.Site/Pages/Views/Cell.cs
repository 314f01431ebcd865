namespace Crossref.Site.Pages.Views;

/// <summary>One size in a table that compares parts.</summary>
/// <param name="Text">The value, or <c>unknown</c>.</param>
/// <param name="Known">Whether it is on record.</param>
public sealed record Cell(string Text, bool Known);

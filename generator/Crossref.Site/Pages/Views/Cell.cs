namespace Crossref.Site.Pages.Views;

/// <summary>One size in a table that compares parts.</summary>
/// <param name="Text">The value, or <c>unknown</c>.</param>
/// <param name="Known">Whether it is on record.</param>
public sealed record Cell(string Text, bool Known)
{
    /// <summary><c>agrees</c> or <c>differs</c>, beside what the table compares with; empty where nothing is compared.</summary>
    public string Word { get; init; } = "";
}

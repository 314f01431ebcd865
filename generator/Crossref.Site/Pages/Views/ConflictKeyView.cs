namespace Crossref.Site.Pages.Views;

/// <summary>A key at which copies differ.</summary>
/// <param name="Name">The keys that lead to it.</param>
/// <param name="Choices">What copies say there.</param>
public sealed record ConflictKeyView(string Name, IReadOnlyList<ChoiceRow> Choices);

namespace Crossref.Site.Pages.Views;

/// <summary>What one copy says.</summary>
/// <param name="Number">The number by which it is chosen.</param>
/// <param name="Text">Its text.</param>
/// <param name="Library">In which library it was written.</param>
/// <param name="Date">When it was noted there.</param>
/// <param name="InForce">Whether it counts until somebody chooses.</param>
public sealed record ChoiceRow(int Number, string Text, string Library, string Date, bool InForce);

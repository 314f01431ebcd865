namespace Crossref.Site.Pages.Views;

/// <summary>The overview of the calculators.</summary>
/// <param name="Lines">One a calculator.</param>
public sealed record CalculatorsView(IReadOnlyList<CalculatorLine> Lines);

namespace Crossref.Site.Pages.Views;

/// <summary>A calculator on the overview.</summary>
/// <param name="Calculator">Leads to its page.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Questions">Questions of the bench that it answers; each link opens the page filled in.</param>
public sealed record CalculatorLine(Link Calculator, string Purpose, IReadOnlyList<Link> Questions);

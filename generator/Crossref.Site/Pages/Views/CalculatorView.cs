using Crossref.Core.Arithmetic;

namespace Crossref.Site.Pages.Views;

/// <summary>A calculator's page.</summary>
/// <param name="Calculator">What it works out.</param>
/// <param name="Questions">Questions of the bench that it answers; each link opens the page filled in.</param>
/// <param name="Groups">What it asks for.</param>
public sealed record CalculatorView(Calculator Calculator, IReadOnlyList<Link> Questions, IReadOnlyList<FieldGroup> Groups);

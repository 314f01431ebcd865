using Crossref.Core.Arithmetic;

namespace Crossref.Site.Pages.Views;

/// <summary>A field of a calculator's form.</summary>
/// <param name="Id">Its id on the page.</param>
/// <param name="Input">What it asks for.</param>
/// <param name="Unit">The unit that is meant when none is written; empty for none.</param>
/// <param name="Hint">What helps whoever fills it in; empty for nothing.</param>
/// <param name="Offered">Machines and families to pick from, though anything may be written; empty for most fields.</param>
public sealed record FieldView(string Id, CalculatorInput Input, string Unit, string Hint, IReadOnlyList<KnownMachine> Offered);

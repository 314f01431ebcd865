namespace Crossref.Site.Pages.Views;

/// <summary>Fields of a calculator's form that are wanted together.</summary>
/// <param name="Heading">The heading under which they are folded away; empty for what most people begin with.</param>
/// <param name="Fields">The fields.</param>
public sealed record FieldGroup(string Heading, IReadOnlyList<FieldView> Fields);

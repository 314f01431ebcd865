namespace Crossref.Site.Reading.Shapes;

/// <summary>One key of a record.</summary>
/// <param name="Name">As written.</param>
/// <param name="Value">What its value may be.</param>
/// <param name="Required">Whether it must be there.</param>
/// <param name="Says">What it says, for editors and documentation.</param>
internal sealed record KeyShape(string Name, ValueShape Value, bool Required, string Says);

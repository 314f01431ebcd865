using Crossref.Core.Quantities;

namespace Crossref.Core.Records;

/// <summary>One size on record: a quantity, or a word for an attribute that is not a number.</summary>
/// <param name="Text">As written.</param>
/// <param name="Quantity">The number; null for a word.</param>
public sealed record Size(string Text, Quantity? Quantity);

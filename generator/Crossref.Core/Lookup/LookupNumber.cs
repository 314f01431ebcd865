namespace Crossref.Core.Lookup;

/// <summary>A number an entry is found by.</summary>
/// <param name="Text">As people write it; shown in results.</param>
/// <param name="Role">What the number is to the entry.</param>
/// <param name="Maker">Whose number it is, for <see cref="NumberRole.Also"/>; found as a word, too.</param>
public sealed record LookupNumber(string Text, NumberRole Role, string? Maker = null);

namespace Crossref.Core.Sizes;

/// <summary>One attribute of two parts, side by side.</summary>
/// <param name="Attribute">The attribute's name.</param>
/// <param name="One">The first part's size; null when it is not on record.</param>
/// <param name="Other">The second part's size; null when it is not on record.</param>
/// <param name="Agreement">How they stand to each other.</param>
/// <param name="MustMatch">Whether a known difference rules out, whatever anyone claims.</param>
/// <param name="How">How far apart they may be, and why; empty when a size is not on record.</param>
public sealed record SizeComparison(string Attribute, KnownSize? One, KnownSize? Other, Agreement Agreement, bool MustMatch, string How);

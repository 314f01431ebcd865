namespace Crossref.Core.Lookup;

/// <summary>
/// One entry under a key. The level orders entries: the role of a number (lowest first)
/// or the impact of a word (highest first).
/// </summary>
internal readonly record struct Posting(int Level, int Entry);

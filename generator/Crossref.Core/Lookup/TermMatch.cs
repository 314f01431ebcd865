namespace Crossref.Core.Lookup;

/// <summary>How an entry answers one term: by a number, or by words that add up to a sum.</summary>
internal readonly record struct TermMatch(NumberMatch? Number, int Sum, IReadOnlyList<string> Words);

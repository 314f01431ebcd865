namespace Crossref.Core.Lookup;

/// <summary>A word of an entry that answers a word of the query.</summary>
internal readonly record struct WordMatch(int Impact, string Word);

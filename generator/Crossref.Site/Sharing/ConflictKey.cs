namespace Crossref.Site.Sharing;

/// <summary>A key at which copies differ.</summary>
/// <param name="Key">The keys that lead to it, such as <c>assemblies / fold-head / name</c>; empty for the whole record.</param>
/// <param name="Choices">What copies say there; the first is in force.</param>
public sealed record ConflictKey(string Key, IReadOnlyList<ConflictChoice> Choices);

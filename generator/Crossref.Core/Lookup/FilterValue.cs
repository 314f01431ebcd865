namespace Crossref.Core.Lookup;

/// <summary>A value a filter can take.</summary>
/// <param name="Filter"><c>type</c>, <c>kind</c>, <c>family</c> or <c>standing</c>.</param>
/// <param name="Value">As the entries carry it.</param>
/// <param name="Count">How many entries it leaves.</param>
public sealed record FilterValue(string Filter, string Value, int Count);

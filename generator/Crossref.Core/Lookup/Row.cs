namespace Crossref.Core.Lookup;

/// <summary>A row of a table.</summary>
internal readonly record struct Row(string Key, string Value);

namespace Crossref.Core.Lookup;

/// <summary>One file of an index.</summary>
/// <param name="Path">Relative to the root of the site, with forward slashes and lower case.</param>
/// <param name="Text">Plain ASCII.</param>
public sealed record LookupFile(string Path, string Text);

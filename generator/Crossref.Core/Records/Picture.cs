namespace Crossref.Core.Records;

/// <summary>A local picture and what it shows.</summary>
/// <param name="File">Path below the content folder.</param>
/// <param name="Shows">What it shows, in words, for whoever cannot see it.</param>
/// <param name="Place">Where it is written.</param>
public sealed record Picture(string File, string Shows, Place Place);

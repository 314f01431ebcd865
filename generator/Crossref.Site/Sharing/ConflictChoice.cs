namespace Crossref.Site.Sharing;

/// <summary>What a copy says at a key.</summary>
/// <param name="Text">The lines; null for nothing.</param>
/// <param name="Library">The library in which it was written.</param>
/// <param name="Date">When that was noted there.</param>
public sealed record ConflictChoice(string? Text, string Library, string Date);

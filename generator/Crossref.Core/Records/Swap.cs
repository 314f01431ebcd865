namespace Crossref.Core.Records;

/// <summary>A whole unit changed for another.</summary>
/// <param name="Assembly">The assembly, by its address.</param>
/// <param name="Out">The unit that came out.</param>
/// <param name="In">The unit that went in.</param>
public sealed record Swap(Ref Assembly, Ref? Out, Ref? In);

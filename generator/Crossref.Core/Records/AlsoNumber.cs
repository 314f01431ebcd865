namespace Crossref.Core.Records;

/// <summary>The same part under another maker's number.</summary>
public sealed record AlsoNumber(string Maker, Ref Number, Ref? Source);

namespace Crossref.Core.Records;

/// <summary>A part that the maker's list names for a position, and for which machines.</summary>
public sealed record Listing(Ref Part, Condition OnlyIf);

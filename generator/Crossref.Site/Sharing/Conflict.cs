using Crossref.Core.Records;

namespace Crossref.Site.Sharing;

/// <summary>A record of which copies differ, until somebody chooses.</summary>
/// <param name="Type">What the record is.</param>
/// <param name="Name">Its id; behind the library's and a colon where it is a shop's record.</param>
/// <param name="File">The file below the content folder that says so; deleting it settles what is in force.</param>
/// <param name="Keys">Where copies differ.</param>
public sealed record Conflict(RecordType Type, string Name, string File, IReadOnlyList<ConflictKey> Keys);

/// <summary>A key at which copies differ.</summary>
/// <param name="Key">The keys that lead to it, such as <c>assemblies / fold-head / name</c>; empty for the whole record.</param>
/// <param name="Choices">What copies say there; the first is in force.</param>
public sealed record ConflictKey(string Key, IReadOnlyList<ConflictChoice> Choices);

/// <summary>What a copy says at a key.</summary>
/// <param name="Text">The lines; null for nothing.</param>
/// <param name="Library">The library in which it was written.</param>
/// <param name="Date">When that was noted there.</param>
public sealed record ConflictChoice(string? Text, string Library, string Date);

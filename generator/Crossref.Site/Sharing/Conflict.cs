using Crossref.Core.Records;

namespace Crossref.Site.Sharing;

/// <summary>A record of which copies differ, until somebody chooses.</summary>
/// <param name="Type">What the record is.</param>
/// <param name="Name">Its id; behind the library's and a colon where it is a shop's record.</param>
/// <param name="File">The file below the content folder that says so; choosing takes it away, and deleting it settles what is in force.</param>
/// <param name="Keys">Where copies differ.</param>
public sealed record Conflict(RecordType Type, string Name, string File, IReadOnlyList<ConflictKey> Keys);

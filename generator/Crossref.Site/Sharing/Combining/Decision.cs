using Crossref.Core.Records;

namespace Crossref.Site.Sharing.Combining;

/// <summary>What was decided for one record, and why.</summary>
/// <param name="Outcome">What became of it.</param>
/// <param name="Type">What it is.</param>
/// <param name="Name">Its id; behind the library's and a colon where it is a shop's record. Of a picture, its file.</param>
/// <param name="File">Where it stands now.</param>
/// <param name="Keys">The keys that changed here or that are to be chosen.</param>
/// <param name="Why">A sentence where the outcome alone does not say it; else empty.</param>
public sealed record Decision(CombineOutcome Outcome, RecordType Type, string Name, string File, IReadOnlyList<string> Keys, string Why);

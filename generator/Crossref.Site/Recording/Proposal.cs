using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;

namespace Crossref.Site.Recording;

/// <summary>New records, checked in the library as it would be with them.</summary>
/// <param name="Records">The records.</param>
/// <param name="After">The library with them.</param>
/// <param name="Caused">What the checks say now and did not say before.</param>
public sealed record Proposal(IReadOnlyList<NewRecord> Records, Library After, IReadOnlyList<Diagnostic> Caused)
{
    /// <summary>Whether they cannot be written: they would bring an error into the library.</summary>
    public bool IsRefused => Caused.Any(d => d.Severity == Severity.Error);

    /// <summary>The files to write.</summary>
    public IReadOnlyList<FileChange> Changes => [.. Records.Where(r => !r.IsKnown).Select(r => r.Change)];
}

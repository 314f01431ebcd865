using Crossref.Core.Checking;
using Crossref.Core.Storing;

namespace Crossref.Site.Sharing.Combining;

/// <summary>What combining two copies comes to, before anything is written.</summary>
/// <param name="Ours">Whose folder it is; empty when nobody knows.</param>
/// <param name="Theirs">Whose copy comes in; empty when nobody knows.</param>
/// <param name="Decisions">One for each record that either copy has, by name.</param>
/// <param name="Changes">Everything to be written, together or not at all.</param>
/// <param name="Diagnostics">What is wrong with either copy; an error means that nothing is taken.</param>
public sealed record CombinePlan(string Ours, string Theirs, IReadOnlyList<Decision> Decisions, IReadOnlyList<FileChange> Changes, IReadOnlyList<Diagnostic> Diagnostics)
{
    /// <summary>Whether nothing can be taken.</summary>
    public bool IsRefused => Diagnostics.Any(d => d.Severity == Severity.Error);
}

using Crossref.Core.Checking;
using Crossref.Core.Storing;

namespace Crossref.Site.Recording;

/// <summary>What is to be done with the inbox.</summary>
/// <param name="Taken">Ids of the records that are taken in.</param>
/// <param name="Changes">The files that this writes and takes away, all or none.</param>
/// <param name="Diagnostics">Why the other files stay.</param>
public sealed record InboxPlan(IReadOnlyList<string> Taken, IReadOnlyList<FileChange> Changes, IReadOnlyList<Diagnostic> Diagnostics)
{
    /// <summary>Nothing to do.</summary>
    public static InboxPlan Nothing { get; } = new([], [], []);
}

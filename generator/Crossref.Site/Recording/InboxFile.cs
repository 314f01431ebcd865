using Crossref.Core.Checking;
using Crossref.Core.Records;
using Crossref.Core.Storing;

namespace Crossref.Site.Recording;

/// <summary>A file of the inbox as far as it can be read on its own.</summary>
/// <param name="Path">Below the content folder.</param>
internal sealed record InboxFile(string Path)
{
    /// <summary>What it says, as UTF-8 with plain line feeds.</summary>
    internal byte[] Bytes { get; init; } = [];
    /// <summary>The types and ids of what is in it.</summary>
    internal IReadOnlyList<(RecordType Type, string Id)> Records { get; init; } = [];
    /// <summary>Why it is not taken in; empty when nothing speaks against it.</summary>
    internal IReadOnlyList<Diagnostic> Problems { get; init; } = [];
    /// <summary>Whether all of it is on record already.</summary>
    internal bool IsKnown { get; init; }

    /// <summary>Nothing is left here.</summary>
    internal FileChange Removal => new(Path, null);
}

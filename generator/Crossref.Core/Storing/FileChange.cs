namespace Crossref.Core.Storing;

/// <summary>One file of a content folder as it shall be.</summary>
/// <param name="Path">Below the folder, with forward slashes.</param>
/// <param name="Content">Its bytes; null to take it away.</param>
public sealed record FileChange(string Path, byte[]? Content)
{
    /// <summary>Whether the change is refused when a file of that name is there already.</summary>
    public bool MustBeNew { get; init; }
}

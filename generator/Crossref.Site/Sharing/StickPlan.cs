using Crossref.Core.Records;

namespace Crossref.Site.Sharing;

/// <summary>What goes on a stick.</summary>
/// <param name="Content">The content folder.</param>
/// <param name="Library">What was read from it.</param>
/// <param name="Date">The day on the first page.</param>
public sealed record StickPlan(string Content, LibraryRecord Library, DateOnly Date)
{
    /// <summary>The folder that holds the published tools; null for none.</summary>
    public string? Tools { get; init; }

    /// <summary>Whether records on the stick that are not of our packing may be replaced: they were taken in before.</summary>
    public bool Replaces { get; init; }
}

using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;
using Crossref.Site.Sharing.Publishing;

namespace Crossref.Site.Pages;

/// <summary>What a build is told besides the library.</summary>
/// <param name="Date">The day the pages speak of.</param>
public sealed record SiteOptions(DateOnly Date)
{
    /// <summary>A folder whose files stand in for the shipped ones of the same name; null for none.</summary>
    public string? TemplateFolder { get; init; }

    /// <summary>What was said when a stick was last packed; null when none was.</summary>
    public PublishedState? Published { get; init; }

    /// <summary>Records of which copies differ, until somebody chooses.</summary>
    public IReadOnlyList<Conflict> Conflicts { get; init; } = [];

    /// <summary>What the last combining brought in; null when nothing ever came.</summary>
    public CameIn? CameIn { get; init; }

    /// <summary>
    /// Reads a picture by its path below the content folder; null when it cannot be had, and then pages show its text alone.
    /// Whoever reads decides what is safe to open.
    /// </summary>
    public Func<string, byte[]?> ReadPicture { get; init; } = _ => null;
}

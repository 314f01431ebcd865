using Crossref.Core.Lookup;
using Crossref.Core.Records;
using Crossref.Site.Pages;

namespace Crossref.Site;

/// <summary>Everything a site consists of: its pages, what belongs to them, and the lookup index.</summary>
public static class SiteBuilder
{
    // The checks warn above this; a picture far above it would only stop the shop PC.
    private const long LargestPicture = 20_000_000;

    /// <summary>Every file of a library's site, made one after the other.</summary>
    public static IEnumerable<SiteFile> Files(Library library, SiteOptions options) =>
        SitePages.Render(library, options)
            .Concat(LookupIndex.Build(LookupEntries.Of(library, new PageMap(library))).Select(f => SiteFile.Text(f.Path, f.Text)));

    /// <summary>Reads pictures below a content folder and nothing outside it.</summary>
    public static Func<string, byte[]?> PicturesBelow(string contentFolder)
    {
        var root = Path.GetFullPath(contentFolder) + Path.DirectorySeparatorChar;
        return picture =>
        {
            var file = new FileInfo(Path.GetFullPath(Path.Combine(root, picture)));
            var isInside = file.FullName.StartsWith(root, StringComparison.Ordinal) && file.LinkTarget is null;
            return isInside && file.Exists && file.Length <= LargestPicture ? File.ReadAllBytes(file.FullName) : null;
        };
    }
}

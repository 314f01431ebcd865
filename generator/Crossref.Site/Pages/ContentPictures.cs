namespace Crossref.Site.Pages;

/// <summary>Reads the pictures of a content folder.</summary>
public static class ContentPictures
{
    // The checks warn above 1 MB; a picture far above it would only stop the shop PC.
    private const long Largest = 20_000_000;

    /// <summary>A reader of pictures below a folder, and of nothing outside it: null for what is not there, too large, or a link.</summary>
    public static Func<string, byte[]?> Below(string contentFolder)
    {
        var root = Path.GetFullPath(contentFolder) + Path.DirectorySeparatorChar;
        return picture =>
        {
            var file = new FileInfo(Path.GetFullPath(Path.Combine(root, picture)));
            var isInside = file.FullName.StartsWith(root, StringComparison.Ordinal) && file.LinkTarget is null;
            return isInside && file.Exists && file.Length <= Largest ? File.ReadAllBytes(file.FullName) : null;
        };
    }
}

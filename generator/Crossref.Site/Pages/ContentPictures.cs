using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;

namespace Crossref.Site.Pages;

/// <summary>Reads the pictures of a content folder for <see cref="SiteOptions.ReadPicture"/>.</summary>
public static class ContentPictures
{
    /// <summary>A reader for one folder. It knows the files that were there when it was made, and never follows a link out of the folder.</summary>
    public static Func<string, byte[]?> In(string contentFolder)
    {
        var folder = ContentFolder.Open(contentFolder, new DiagnosticLog());
        return file => folder.Files.ContainsKey(file) ? Read(folder, file) : null;
    }

    private static byte[] Read(ContentFolder folder, string file)
    {
        using var stream = folder.OpenFile(file);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}

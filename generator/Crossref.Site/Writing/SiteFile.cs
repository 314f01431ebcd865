using System.Text;

namespace Crossref.Site.Writing;

/// <summary>One file of the site.</summary>
/// <param name="Path">Below the site's folder, with forward slashes.</param>
/// <param name="Content">Its bytes.</param>
public sealed record SiteFile(string Path, byte[] Content)
{
    /// <summary>A text file, UTF-8 without a byte order mark.</summary>
    public static SiteFile Text(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));
}

using System.Text;

namespace Crossref.Site.Pages;

/// <summary>One file of the site.</summary>
/// <param name="Path">Relative to the site's root, with forward slashes.</param>
/// <param name="Content">Its bytes; text is UTF-8 without a byte order mark.</param>
public sealed record SiteFile(string Path, ReadOnlyMemory<byte> Content)
{
    /// <summary>A text file.</summary>
    public static SiteFile Text(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    /// <summary>The content of a text file.</summary>
    public string AsText() => Encoding.UTF8.GetString(Content.Span);
}

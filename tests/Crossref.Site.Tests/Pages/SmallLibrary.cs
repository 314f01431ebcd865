using Crossref.Core.Records;
using Crossref.Site.Pages;
using Crossref.Site.Reading;

namespace Crossref.Site.Tests.Pages;

/// <summary>A small library with every kind of record, and its rendered site.</summary>
internal static class SmallLibrary
{
    internal const string Hostile = " <script>alert(1)</script><img src=x onerror=alert(2)>\\\"' onload='alert(3)' {{ 7 * 6 }} &amp; ]]>";

    internal static string Folder { get; } = Path.Combine(Repository.SiteTests, "Pages", "Library");

    internal static SiteOptions Options { get; } = new(new DateOnly(2026, 3, 1)) { ReadPicture = ContentPictures.In(Folder) };

    /// <summary>The library; a text is put behind everything in it that a person may write.</summary>
    internal static Library Read(string text = "")
    {
        using var folder = new TemporaryFolder();
        folder.Lay(Folder, (path, bytes) => path.EndsWith(".yaml", StringComparison.Ordinal)
            ? System.Text.Encoding.UTF8.GetBytes(With(System.Text.Encoding.UTF8.GetString(bytes), text))
            : bytes);
        return ContentReader.Read(folder.Path).Library!;
    }

    /// <summary>The files of its site by path.</summary>
    internal static IReadOnlyDictionary<string, SiteFile> Render(Library library, SiteOptions? options = null) =>
        SitePages.Render(library, options ?? Options).ToDictionary(f => f.Path, StringComparer.Ordinal);

    internal static IEnumerable<SiteFile> Html(IReadOnlyDictionary<string, SiteFile> site) =>
        site.Values.Where(f => f.Path.EndsWith(".html", StringComparison.Ordinal));

    // Quoted, so that any text is a scalar wherever the mark stands.
    private static string With(string yaml, string text) => System.Text.RegularExpressions.Regex.Replace(
        yaml, "\"(?<x>[^\"\\n]*)@\"|(?<=[:{,] )(?<y>[^\\s:{}\\[\\],\"][^\"{}\\n]*?)@(?=[\\n,}\\]])",
        match => $"\"{match.Groups["x"].Value}{match.Groups["y"].Value}{text}\"");
}

using Crossref.Site.Pages;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Tests;
using Crossref.Site.Tests.Hostile;

namespace Crossref.Browser.Tests.Hostile;

/// <summary>A site with every hostile text in every field that takes text, on disk while the tests run.</summary>
public sealed class HostileSite : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public HostileSite()
    {
        using var content = new TemporaryFolder();
        var text = " " + string.Join(' ', HostileText.Shown.Select(t => t.Length > 300 ? t[..300] : t));
        Planting.Lay(content, (map, key, shape, was) =>
            shape is null or { Kind: ValueKind.Text or ValueKind.OpenWord } && (map, key) != ("picture", "file") ? was + text : was);
        content.Write("long.md", $"---\ntitle: {new string('W', 300)}\n---\n{new string('W', 300)}\n\n# {new string('W', 300)}\n\n`{new string('W', 300)}`\n\n```\n{new string('W', 300)}\n```\n\n|a|b|\n|:-:|-:|\n|{new string('W', 300)}|b|\n");
        foreach (var file in SitePages.Render(ContentReader.Read(content.Path).Library!, new SiteOptions(new DateOnly(2026, 6, 1)) { ReadPicture = ContentPictures.In(content.Path) }))
        {
            _folder.Write(file.Path, file.Content.ToArray());
            if (file.Path.EndsWith(".html", StringComparison.Ordinal)) Pages.Add(file.Path);
        }
    }

    /// <summary>Every page's path.</summary>
    public List<string> Pages { get; } = [];

    public string Address(string page) => new Uri(Path.Combine(_folder.Path, page)).AbsoluteUri;

    /// <summary>A page that is not part of the site.</summary>
    public string Add(string page, string html)
    {
        _folder.Write(page, html);
        return Address(page);
    }

    public void Dispose() => _folder.Dispose();
}

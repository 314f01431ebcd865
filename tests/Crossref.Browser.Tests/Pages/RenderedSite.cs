using Crossref.Site.Pages;
using Crossref.Site.Reading;

namespace Crossref.Browser.Tests.Pages;

/// <summary>The site of the small library that the tests of the pages stage use, on disk while the tests run.</summary>
public sealed class RenderedSite : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crossref-site-");

    public RenderedSite()
    {
        var content = Path.Combine(RepositoryFiles.Root, "tests", "Crossref.Site.Tests", "Pages", "Library");
        foreach (var file in SitePages.Render(ContentReader.Read(content).Library!, new SiteOptions(new DateOnly(2026, 3, 1)) { ReadPicture = ContentPictures.In(content) }))
        {
            var path = Path.Combine(_folder.FullName, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, file.Content.ToArray());
        }
    }

    /// <summary>One page of every kind, and of every state that a kind may be in.</summary>
    public static IReadOnlyList<string> Kinds { get; } =
    [
        "index.html", "record.html", "machines.html", "symptoms.html", "parts.html", "shelf.html", "repairs.html", "notes.html", "claims.html", "disputes.html",
        "questions.html", "sources.html", "cautions.html", "standings.html", "kinds/bearing.html", "roles.html", "families/tarrock-a1.html",
        "assemblies/tarrock-a1/head.html", "assemblies/tarrock-a1/tray.html", "positions/tarrock-a1/head--roller-bearing-front.html",
        "positions/tarrock-a1/head--lamp.html", "positions/tarrock-a1/head--switch.html", "parts/brg-a.html", "parts/kit-a.html", "parts/lmp-a.html",
        "machines/folder.html", "symptoms/squeal.html", "repairs/repair-1.html", "notes/bearings.html", "sources/fa-list.html",
        "calculators.html", "calculators/gear.html",
    ];

    public string Address(string page) => new Uri(Path.Combine(_folder.FullName, page)).AbsoluteUri;

    public void Dispose() => _folder.Delete(recursive: true);
}

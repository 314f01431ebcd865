using System.Text;
using Crossref.Core.Lookup;

namespace Crossref.Browser.Tests.Lookup;

/// <summary>A site of one lookup page, one folder deep, in a folder that goes away with it.</summary>
public sealed class LookupSite : IDisposable
{
    private static readonly string[] Scripts = ["lookup-shards.js", "lookup.js", "lookup-recent.js", "lookup-box.js"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crossref-lookup-");

    public LookupSite(IEnumerable<LookupEntry> entries, LookupLayout? layout = null, string preload = "off")
    {
        Files = LookupIndex.Build(entries, layout);
        foreach (var file in Files)
        {
            Write(file.Path, file.Text);
        }

        foreach (var script in Scripts)
        {
            Write(script, File.ReadAllText(Path.Combine(RepositoryFiles.Root, "site-template", script)));
        }

        Write("pages/lookup.html", Html(preload));
    }

    public LookupFiles Files { get; }

    /// <summary>The page with the lookup box, as a file address.</summary>
    public string Page => Address("pages/lookup.html");

    public string Address(string path) => new Uri(Path.Combine(_folder.FullName, path)).AbsoluteUri;

    public void Write(string path, string text)
    {
        var file = Path.Combine(_folder.FullName, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text, new UTF8Encoding(false));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static string Html(string preload) => $"""
        <!doctype html>
        <html lang="en" class="no-js">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:">
        <title>Lookup</title>
        {string.Join('\n', Scripts.Select(script => $"<script defer src=\"../{script}\"></script>"))}
        </head>
        <body>
        <main>
        <h1>Lookup</h1>
        <form class="lookup" role="search" data-root="../" data-preload="{preload}" hidden>
          <label class="lookup-label" for="lookup-text">Number, part, position or symptom</label>
          <input class="lookup-text" id="lookup-text" type="search" autocomplete="off" autocapitalize="off" spellcheck="false">
          <div class="lookup-filters"></div>
          <p class="lookup-status" role="status"></p>
          <ol class="lookup-results"></ol>
        </form>
        </main>
        </body>
        </html>
        """;
}

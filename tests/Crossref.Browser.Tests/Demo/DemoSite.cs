using System.Diagnostics;

namespace Crossref.Browser.Tests.Demo;

/// <summary>The demo library's site, built once by the real executable, opened from file://.</summary>
public sealed class DemoSite : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("demo-site").FullName;

    public DemoSite()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardError = true, RedirectStandardOutput = true };
        foreach (var argument in (string[])[Path.Combine(AppContext.BaseDirectory, "crossref.dll"), "build", "--content", Path.Combine(RepositoryFiles.Root, "content"), "--out", _folder, "--date", "2026-11-25"])
            start.ArgumentList.Add(argument);
        using var build = Process.Start(start)!;
        var output = build.StandardOutput.ReadToEndAsync();
        var error = build.StandardError.ReadToEnd();
        build.WaitForExit();
        Assert.True(build.ExitCode == 0, output.Result + error);
    }

    /// <summary>Every page, by its path below the site.</summary>
    public IEnumerable<string> Pages => Directory.EnumerateFiles(_folder, "*.html", SearchOption.AllDirectories)
        .Select(f => Path.GetRelativePath(_folder, f).Replace('\\', '/')).Order(StringComparer.Ordinal);

    /// <summary>One page of every folder and every page of the top.</summary>
    public IEnumerable<string> PageKinds => Pages.GroupBy(page => page.Contains('/') ? Path.GetDirectoryName(page) : page).Select(kind => kind.First());

    /// <summary>The address of a page.</summary>
    public string Address(string page) => new Uri(Path.Combine(_folder, page)).AbsoluteUri;

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}

using System.Diagnostics;

namespace Crossref.Browser.Tests.Recording;

/// <summary>A copy of the demo's content that a test may add to, and the site that the real executable builds of it.</summary>
public sealed class ContentCopy : IDisposable
{
    /// <summary>The day on which the site is built.</summary>
    public const string Day = "2026-11-25";

    private readonly string _folder = Directory.CreateTempSubdirectory("recorded-").FullName;

    public ContentCopy()
    {
        var from = Path.Combine(RepositoryFiles.Root, "content");
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(Content, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
        Build();
    }

    public string Content => Path.Combine(_folder, "content");

    /// <summary>The address of a page.</summary>
    public string Address(string page) => new Uri(Path.Combine(_folder, "site", page)).AbsoluteUri;

    /// <summary>Adds a file below the content folder.</summary>
    public void Add(string path, string text)
    {
        var file = Path.Combine(Content, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }

    /// <summary>Builds the site anew.</summary>
    /// <returns>What the build said.</returns>
    public string Build()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardError = true, RedirectStandardOutput = true };
        foreach (var argument in (string[])[Path.Combine(AppContext.BaseDirectory, "crossref.dll"), "build", "--content", Content, "--out", Path.Combine(_folder, "site"), "--date", Day])
            start.ArgumentList.Add(argument);
        using var build = Process.Start(start)!;
        var output = build.StandardOutput.ReadToEndAsync();
        var error = build.StandardError.ReadToEnd();
        build.WaitForExit();
        Assert.True(build.ExitCode == 0, output.Result + error);
        return output.Result + error;
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}

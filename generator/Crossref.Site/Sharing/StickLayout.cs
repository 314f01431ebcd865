namespace Crossref.Site.Sharing;

/// <summary>Where things lie on a stick.</summary>
public static class StickLayout
{
    /// <summary>The list of every other file, as <c>sha256sum -c</c> reads it.</summary>
    public const string Manifest = "MANIFEST.sha256";

    /// <summary>The page that says what is here; it is written last.</summary>
    public const string Start = "START-HERE.html";

    internal const string Site = "site/";
    internal const string Content = "content/";
    internal const string Tool = "tool/";

    /// <summary>The tool for each system: the path below a folder of published tools, and the system's name.</summary>
    internal static IReadOnlyList<(string Path, string System)> Tools { get; } =
    [
        ("win-x64/crossref.exe", "Windows"), ("linux-x64/crossref", "Linux"), ("osx-arm64/crossref", "macOS (Apple chip)"), ("osx-x64/crossref", "macOS (Intel chip)"),
    ];

    /// <summary>The update script of each system, and the text it is made from.</summary>
    internal static IReadOnlyList<(string Path, string Source)> Updates { get; } =
    [
        ("update-windows.cmd", "update-windows.cmd"), ("update-linux.sh", "update-unix.sh"), ("update-mac.command", "update-unix.sh"),
    ];

    /// <summary>Whether a folder holds the published tool for some system.</summary>
    public static bool HasTools(string folder) => Tools.Any(t => File.Exists(Path.Combine(folder, t.Path)));

    /// <summary>Whether a path is one that packing can have written.</summary>
    internal static bool Holds(string path) =>
        path == Start || Updates.Any(u => u.Path == path) || Tools.Any(t => path == Tool + t.Path)
        || path.StartsWith(Site, StringComparison.Ordinal) || path.StartsWith(Content, StringComparison.Ordinal);
}

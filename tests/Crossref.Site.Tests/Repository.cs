namespace Crossref.Site.Tests;

/// <summary>Where the project's own files are.</summary>
internal static class Repository
{
    internal static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>The folder of this test project.</summary>
    internal static string SiteTests { get; } = Path.Combine(Root, "tests", "Crossref.Site.Tests");

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "Crossref.sln")) ? folder : Find(Path.GetDirectoryName(folder)!);
}

using Crossref.Site.Sharing;

namespace Crossref.Cli;

/// <summary>Where the self-contained tools for other systems lie.</summary>
internal static class PublishedTools
{
    /// <summary>
    /// The folder of the tools that belong to the one that runs: beside it, in a folder <c>tool</c> beside it, or one
    /// level up when it lies among them itself. Null when there are none.
    /// </summary>
    internal static string? BesideThis() =>
        new[] { AppContext.BaseDirectory, Path.Combine(AppContext.BaseDirectory, "tool"), Path.Combine(AppContext.BaseDirectory, "..") }.FirstOrDefault(StickLayout.HasTools);
}

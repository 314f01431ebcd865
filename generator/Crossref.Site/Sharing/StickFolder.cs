using Crossref.Core.Storing;
using Crossref.Site.Writing;

namespace Crossref.Site.Sharing;

/// <summary>What lies on a stick, whoever put it there.</summary>
internal static class StickFolder
{
    // What systems put on every stick that they see, and our lock.
    private static readonly HashSet<string> Litter = new(StringComparer.OrdinalIgnoreCase)
    {
        "System Volume Information", "$RECYCLE.BIN", "desktop.ini", "Thumbs.db", ".DS_Store", ".Spotlight-V100", ".Trashes", ".fseventsd", ".TemporaryItems", "lost+found",
        SiteWriter.LockName,
    };

    /// <summary>Every file by its path below the folder, with forward slashes; links are named and not followed.</summary>
    internal static IEnumerable<(string Path, bool IsLink)> Files(string folder) => Walk(new DirectoryInfo(folder), "");

    private static IEnumerable<(string Path, bool IsLink)> Walk(DirectoryInfo folder, string prefix)
    {
        foreach (var entry in folder.EnumerateFileSystemInfos().OrderBy(e => e.Name, StringComparer.Ordinal))
        {
            var path = prefix + entry.Name;
            if (IsLitter(entry.Name, path)) continue;
            if (entry.LinkTarget is not null) yield return (path, true);
            else if (entry is not DirectoryInfo inner) yield return (path, false);
            else foreach (var file in Walk(inner, path + "/")) yield return file;
        }
    }

    private static bool IsLitter(string name, string path) =>
        Litter.Contains(name) || name.StartsWith("._", StringComparison.Ordinal) || name.StartsWith(".Trash-", StringComparison.Ordinal)
        || path == StickLayout.Content + ContentStore.LockPath;
}

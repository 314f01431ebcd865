using Crossref.Core.Storing;
using Crossref.Site.Sharing.Publishing;
using Crossref.Site.Writing;

namespace Crossref.Site.Sharing;

/// <summary>The files of a content folder that travel: all but what a change under way needs, hidden files of others, and links.</summary>
internal static class StickContent
{
    // One byte less than 4 GB is all that FAT32 holds; long before that a stick is no place for it.
    private const long Largest = 1_000_000_000;

    private const int Shown = 20;

    /// <summary>Their paths below the folder, with forward slashes.</summary>
    /// <exception cref="SiteFolderException">A stick cannot hold one of them; all such are named.</exception>
    internal static IReadOnlyList<string> Files(string folder)
    {
        var files = StickFolder.Files(folder).Where(f => !f.IsLink).Select(f => f.Path).Where(Travels).ToList();
        var troubles = files.Select(f => (Path: f, Why: TroubleOf(folder, f))).Where(f => f.Why is not null).Concat(Twins(files)).Select(f => $"  {Visible(f.Path)}: {f.Why}").ToList();
        if (troubles.Count == 0) return files;
        var more = troubles.Count > Shown ? $"\n  and {troubles.Count - Shown} more" : "";
        throw new SiteFolderException(
            $"A stick cannot hold these files of {Path.GetFullPath(folder)}:\n{string.Join('\n', troubles.Take(Shown))}{more}",
            "Give them other names, and pack again. Nothing was written.");
    }

    private static bool Travels(string path)
    {
        if (path == Publications.FileName) return false;
        var names = path.Split('/');
        return !ContentStore.Passing.Any(p => path.Equals(p, StringComparison.OrdinalIgnoreCase) || path.StartsWith(p + "/", StringComparison.OrdinalIgnoreCase))
            && names.Skip(names[0] == ContentStore.OwnFolder ? 1 : 0).All(n => !n.StartsWith('.'));
    }

    private static string? TroubleOf(string folder, string path) =>
        PortableName.Trouble(StickLayout.Content + path) ?? (new FileInfo(Path.Combine(folder, path)).Length > Largest ? "it is larger than 1 GB" : null);

    // Two names that differ in capitals alone are one name on a stick; the same for folders.
    private static IEnumerable<(string Path, string? Why)> Twins(IEnumerable<string> files)
    {
        var seen = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var path in files)
            for (var end = path.IndexOf('/', StringComparison.Ordinal) is var slash and > 0 ? slash : path.Length; ; end = path.IndexOf('/', end + 1) is var next and > 0 ? next : path.Length)
            {
                var part = path[..end];
                if (!seen.TryAdd(part, part) && seen[part] != part && told.Add(part)) yield return (part, $"it differs from {Visible(seen[part])} in capital letters only");
                if (end == path.Length) break;
            }
    }

    private static string Visible(string path) => new([.. path.Select(c => char.IsControl(c) ? '\uFFFD' : c)]);
}

using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Crossref.Core.Storing;
using Crossref.Site.Pages;

namespace Crossref.Site.Writing;

/// <summary>
/// Puts a site into its folder: writes only what changed, removes pages that are no longer part of it, and never
/// touches a file that it did not write itself. What it wrote stands in a list, line by line as
/// <c>sha256sum -c</c> reads it.
/// </summary>
public sealed class SiteWriter(string folder, IDisk disk, string list = SiteWriter.ListName)
{
    /// <summary>The list of the site's own files.</summary>
    public const string ListName = "crossref-files.sha256";

    private static readonly string NotAnyMore = new('0', 64);

    private readonly string _folder = Path.GetFullPath(folder);

    /// <summary>Writes the files of a site.</summary>
    /// <exception cref="SiteFolderException">The folder cannot be written, or holds files of somebody else.</exception>
    public SiteChanges Write(IEnumerable<SiteFile> files)
    {
        try
        {
            _ = ReadOwn(); // refuses before anything is written
            disk.MakeFolder(_folder);
            using var held = FolderLock.Take(FullPath(LockName));
            return Write(files, ReadOwn());
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException && e is not SiteFolderException and not StoreException)
        {
            throw new SiteFolderException($"{_folder} could not be written: {e.Message}", "Choose a folder you may write to with --out, or free some space.", e);
        }
    }

    private SiteChanges Write(IEnumerable<SiteFile> files, HashSet<string> old)
    {
        var own = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var changed = new List<(string Path, string Staged)>();
        // What an interrupted build left behind was never part of the site.
        disk.DeleteFolder(Staging);
        foreach (var file in files)
        {
            var hash = HashOf(file.Content.Span);
            if (!own.TryAdd(file.Path, hash)) throw new InvalidOperationException($"Two pages want the path {file.Path}.");
            var target = FullPath(file.Path);
            if (disk.HasFile(target))
            {
                if (!old.Contains(file.Path)) throw Foreign(target);
                // What is on the disk counts, not what the list remembers of it: a page may have been damaged or cut short.
                if (HashOf(disk.Read(target)) == hash) continue;
            }
            var staged = Path.Combine(Staging, changed.Count.ToString(CultureInfo.InvariantCulture));
            disk.MakeFolder(Staging);
            disk.Write(staged, file.Content.Span);
            changed.Add((file.Path, staged));
        }
        var stale = old.Where(path => !own.ContainsKey(path)).ToList();
        if (changed.Count > 0 || stale.Count > 0 || !disk.HasFile(ListPath)) MoveIn(old, own, changed, stale);
        return new SiteChanges(own.Count, changed.Count, stale.Count);
    }

    // Nothing is moved before every page is made. Then new pages come first and stale ones go last, so that at no moment
    // a link leads nowhere. Meanwhile the list names old and new files: the next build knows either for its own, and
    // finishes what was interrupted.
    private void MoveIn(
        HashSet<string> old, SortedDictionary<string, string> own, List<(string Path, string Staged)> changed, List<string> stale)
    {
        WriteList(own.Concat(stale.Select(path => KeyValuePair.Create(path, NotAnyMore))));
        foreach (var (path, staged) in changed.OrderBy(c => old.Contains(c.Path)))
        {
            disk.MakeFolder(Path.GetDirectoryName(FullPath(path))!);
            disk.Move(staged, FullPath(path));
        }
        foreach (var path in stale) Remove(path);
        WriteList(own);
        disk.DeleteFolder(Staging);
    }

    private const string StagingName = ".crossref-next";
    private const string LockName = ".crossref-lock";

    private string Staging => FullPath(StagingName);

    private string NextList => ListPath + ".next";

    private string ListPath => Path.Combine(_folder, list);

    private string FullPath(string path) => Path.Combine(_folder, path.Replace('/', Path.DirectorySeparatorChar));

    private void Remove(string path)
    {
        disk.Delete(FullPath(path));
        for (var parent = Path.GetDirectoryName(FullPath(path)); parent is not null && parent.Length > _folder.Length; parent = Path.GetDirectoryName(parent))
        {
            if (!Directory.Exists(parent) || Directory.EnumerateFileSystemEntries(parent).Any()) break;
            disk.DeleteFolder(parent);
        }
    }

    private void WriteList(IEnumerable<KeyValuePair<string, string>> files)
    {
        // A list that the power cut short would make strangers of our own files: it is on the disk before it counts.
        disk.Delete(NextList);
        disk.WriteThrough(NextList, Encoding.UTF8.GetBytes(string.Concat(files.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => $"{f.Value}  {f.Key}\n"))));
        disk.Move(NextList, ListPath);
        disk.Flush(_folder);
    }

    private HashSet<string> ReadOwn()
    {
        var own = new HashSet<string>(StringComparer.Ordinal);
        if (File.Exists(_folder)) throw new SiteFolderException($"{_folder} is a file, not a folder.", "Choose another folder with --out.");
        if (!Directory.Exists(_folder)) return own;
        if (!disk.HasFile(ListPath))
        {
            string[] ours = [Staging, NextList, FullPath(LockName)];
            var others = Directory.EnumerateFileSystemEntries(_folder).Except(ours);
            return others.Order(StringComparer.Ordinal).FirstOrDefault() is { } first ? throw Foreign(first) : own;
        }
        foreach (var line in Encoding.UTF8.GetString(disk.Read(ListPath)).Split('\n'))
            if (line.Length > 66 && IsInside(line[66..])) own.Add(line[66..]);
        return own;
    }

    private static string HashOf(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content));

    // A list that was tampered with must not lead out of the folder.
    private bool IsInside(string path) =>
        Path.GetFullPath(FullPath(path)).StartsWith(_folder + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private SiteFolderException Foreign(string file) => new(
        $"{_folder} holds files that Crossref did not write, such as {Path.GetRelativePath(_folder, file)}. Nothing was written.",
        "Choose an empty or a new folder with --out.");
}

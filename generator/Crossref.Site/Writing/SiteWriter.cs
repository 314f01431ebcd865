using System.Globalization;
using System.Security.Cryptography;
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

    internal const string StagingName = ".crossref-next";
    internal const string LockName = ".crossref-lock";

    private readonly string _folder = Path.GetFullPath(folder);

    /// <summary>A file that comes when all else is done, so that its being there says that nothing is missing.</summary>
    internal string? Last { get; init; }

    /// <summary>Whether the disk must have everything in the end; a site can be built again, a stick is pulled.</summary>
    internal bool Flushes { get; init; }

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
            throw new SiteFolderException($"{_folder} could not be written: {e.Message}", "Choose a folder you may write to, or free some space.", e);
        }
    }

    private SiteChanges Write(IEnumerable<SiteFile> files, ILookup<string, string> old)
    {
        var own = new Dictionary<string, string>(StringComparer.Ordinal);
        // What an interrupted build left behind was never part of the site.
        disk.DeleteFolder(Staging);
        disk.Delete(NextList);
        List<(string Path, string Staged)> changed;
        try
        {
            changed = Stage(files, old, own);
        }
        catch
        {
            Forget();
            throw;
        }
        var stale = old.Select(o => o.Key).Where(path => !own.ContainsKey(path)).ToList();
        if (changed.Count > 0 || stale.Count > 0 || !disk.HasFile(ListPath) || own.Any(o => !old[o.Key].SequenceEqual([o.Value]))) MoveIn(old, own, changed, stale);
        return new SiteChanges(own.Count, changed.Count, stale.Count);
    }

    private List<(string Path, string Staged)> Stage(IEnumerable<SiteFile> files, ILookup<string, string> old, Dictionary<string, string> own)
    {
        var changed = new List<(string Path, string Staged)>();
        // A stick knows no difference between A and a.
        var known = old.Select(o => o.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var file in files)
        {
            var hash = HashOf(file.Content.Span);
            if (!own.TryAdd(file.Path, hash)) throw new InvalidOperationException($"Two pages want the path {file.Path}.");
            var target = FullPath(file.Path);
            if (disk.HasFile(target))
            {
                // What is on the disk counts, not what the list remembers of it: a page may have been damaged or cut short.
                if ((old.Contains(file.Path) || !known.Contains(file.Path)) && HashOf(disk.Read(target)) == hash) continue;
                if (!known.Contains(file.Path)) throw Foreign(target);
            }
            var staged = Path.Combine(Staging, changed.Count.ToString(CultureInfo.InvariantCulture));
            if (changed.Count == 0) disk.MakeFolder(Staging);
            disk.Write(staged, file.Content.Span);
            changed.Add((file.Path, staged));
        }
        if (Flushes) changed.ForEach(c => disk.Flush(c.Staged));
        return changed;
    }

    // Nothing is moved before every page is made. Then new pages come first and stale ones go last, so that at no moment
    // a link leads nowhere. Meanwhile the list names old and new files: the next build knows either for its own, and
    // finishes what was interrupted.
    private void MoveIn(ILookup<string, string> old, Dictionary<string, string> own, List<(string Path, string Staged)> changed, List<string> stale)
    {
        WriteList([.. own.Select(o => (o.Key, o.Value)), .. old.SelectMany(o => o.Select(hash => (o.Key, hash)))]);
        var renamed = stale.Where(own.Keys.ToHashSet(StringComparer.OrdinalIgnoreCase).Contains).ToList();
        renamed.ForEach(Remove);
        foreach (var (path, staged) in changed.Where(c => c.Path != Last).OrderBy(c => old.Contains(c.Path))) MoveIn(path, staged);
        stale.Except(renamed).ToList().ForEach(Remove);
        if (Flushes) changed.Select(c => Path.GetDirectoryName(FullPath(c.Path))!).Distinct().ToList().ForEach(disk.Flush);
        WriteList(own.Select(o => (o.Key, o.Value)));
        foreach (var (path, staged) in changed.Where(c => c.Path == Last)) MoveIn(path, staged);
        disk.DeleteFolder(Staging);
        if (Flushes) disk.Flush(_folder);
    }

    private void MoveIn(string path, string staged)
    {
        var parent = Path.GetDirectoryName(FullPath(path))!;
        if (!Directory.Exists(parent)) disk.MakeFolder(parent);
        disk.Move(staged, FullPath(path));
    }

    // Makes room again on a disk that is full. Where even that fails, the next build does it.
    private void Forget()
    {
        try
        {
            disk.DeleteFolder(Staging);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
        }
    }

    private string Staging => FullPath(StagingName);

    private string ListPath => Path.Combine(_folder, list);

    private string NextList => ListPath + ".next";

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

    private void WriteList(IEnumerable<(string Path, string Hash)> files)
    {
        // A list that the power cut short would make strangers of our own files: it is on the disk before it counts.
        disk.WriteThrough(NextList, FileList.Format(files));
        disk.Move(NextList, ListPath);
        disk.Flush(_folder);
    }

    private ILookup<string, string> ReadOwn()
    {
        if (File.Exists(_folder)) throw new SiteFolderException($"{_folder} is a file, not a folder.", "Choose another folder.");
        if (disk.HasFile(ListPath)) return FileList.Read(disk.Read(ListPath));
        if (Directory.Exists(_folder))
        {
            string[] ours = [Staging, NextList, FullPath(LockName)];
            if (Directory.EnumerateFileSystemEntries(_folder).Except(ours).Order(StringComparer.Ordinal).FirstOrDefault() is { } first) throw Foreign(first);
        }
        return FileList.Read([]);
    }

    private static string HashOf(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private SiteFolderException Foreign(string file) => new(
        $"{_folder} holds files that Crossref did not write, such as {Path.GetRelativePath(_folder, file)}. Nothing was written.",
        "Choose an empty or a new folder.");
}

using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;

namespace Crossref.Site.Reading.Files;

/// <summary>
/// The files of a content folder by their path below it, in ordinal order. Links are never followed: what they lead
/// to inside the folder is read where it stands, what they lead to outside is refused.
/// </summary>
internal sealed class ContentFolder
{
    private readonly string _root;
    private readonly Func<string, Stream> _open;
    private readonly SortedDictionary<string, long> _files = new(StringComparer.Ordinal);

    private ContentFolder(string root, Func<string, Stream> open) => (_root, _open) = (root, open);

    /// <summary>Every file's path below the folder, with forward slashes, and its length in bytes.</summary>
    internal IReadOnlyDictionary<string, long> Files => _files;

    /// <summary>Whether there is such a folder.</summary>
    internal bool Exists { get; private init; }

    /// <summary>Looks through a folder. Names that begin with a dot, and <c>inbox</c>, belong to the tool and are left out.</summary>
    internal static ContentFolder Open(string path, DiagnosticLog log)
    {
        var given = new DirectoryInfo(path);
        var root = (given.Exists ? given.ResolveLinkTarget(returnFinalTarget: true)?.FullName : null) ?? given.FullName;
        var folder = new ContentFolder(root, file => File.OpenRead(Path.Combine(root, file))) { Exists = Directory.Exists(root) };
        if (folder.Exists) folder.Walk(new DirectoryInfo(root), "", log);
        else log.Add(FileCodes.Unreadable, new Place(".", 0, 0), "there is no content folder here", "name the folder that holds the records with --content");
        return folder;
    }

    /// <summary>A folder that is not on a disk: files by their path below it.</summary>
    internal static ContentFolder Of(IReadOnlyDictionary<string, byte[]> files)
    {
        var folder = new ContentFolder("", file => new MemoryStream(files[file], writable: false)) { Exists = true };
        foreach (var (path, bytes) in files) folder._files[path] = bytes.Length;
        return folder;
    }

    /// <summary>One file alone, wherever it is.</summary>
    internal static ContentFolder OfFile(string path, FileInfo file)
    {
        var folder = new ContentFolder("", _ => file.OpenRead()) { Exists = true };
        folder._files[path] = file.Length;
        return folder;
    }

    /// <summary>The same folder with more files in it, or with other content in some of them.</summary>
    internal ContentFolder With(IReadOnlyDictionary<string, byte[]> files)
    {
        var folder = new ContentFolder(_root, file => files.TryGetValue(file, out var bytes) ? new MemoryStream(bytes, writable: false) : _open(file)) { Exists = Exists };
        foreach (var (path, length) in _files) folder._files[path] = length;
        foreach (var (path, bytes) in files) folder._files[path] = bytes.Length;
        return folder;
    }

    internal Stream OpenFile(string path) => _open(path);

    private void Walk(DirectoryInfo directory, string prefix, DiagnosticLog log)
    {
        IEnumerable<FileSystemInfo> entries;
        try
        {
            entries = [.. directory.EnumerateFileSystemInfos().OrderBy(e => e.Name, StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            log.Add(FileCodes.Unreadable, new Place(prefix.TrimEnd('/'), 0, 0), "this folder cannot be read", "check who may read it");
            return;
        }
        foreach (var entry in entries)
        {
            var path = prefix + entry.Name;
            if (entry.Name.StartsWith('.') || prefix.Length == 0 && entry.Name.Equals("inbox", StringComparison.OrdinalIgnoreCase)) continue;
            if (HasOddName(entry.Name, prefix, log)) continue;
            if (entry.LinkTarget is not null) RefuseIfOutside(entry, path, log);
            else if (entry is DirectoryInfo inner) Walk(inner, path + "/", log);
            else if (LengthOf((FileInfo)entry) is { } length) _files[path] = length;
            else log.Add(FileCodes.Unreadable, new Place(path, 0, 0), "this file cannot be read", "check who may read it, and whether the stick is still there");
        }
    }

    // A file may be gone by the time it is looked at.
    private static long? LengthOf(FileInfo file)
    {
        try
        {
            return file.Length;
        }
        catch (IOException)
        {
            return null;
        }
    }

    // In a name a tab or a line feed is as odd as any other control character.
    private static bool HasOddName(string name, string prefix, DiagnosticLog log)
    {
        var controls = name.Replace('\n', '\r').Replace('\t', '\r');
        return log.AddHidden(controls, new Place(prefix + HiddenCharacters.Masked(controls), 0, 0), "give this file or folder another name");
    }

    private void RefuseIfOutside(FileSystemInfo link, string path, DiagnosticLog log)
    {
        string? target;
        try
        {
            target = link.ResolveLinkTarget(returnFinalTarget: true)?.FullName;
        }
        catch (IOException)
        {
            target = null;
        }
        var inside = target is not null && Path.GetFullPath(target).StartsWith(_root.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar, StringComparison.Ordinal);
        if (!inside) log.Add(FileCodes.LinkOut, new Place(path, 0, 0), "this link leads out of the content folder", "copy the file or folder itself to this place");
    }
}

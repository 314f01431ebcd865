using System.Security.Cryptography;
using System.Text;
using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading.Files;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing.Combining;

/// <summary>Lays changed and new records into the files of a folder; what is not changed stays to the byte.</summary>
internal sealed class Layout(FolderTexts ours)
{
    private readonly Dictionary<string, Dictionary<int, string>> _replaced = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, List<RecordText>> _added = new(StringComparer.Ordinal);
    private readonly Dictionary<string, byte[]> _whole = new(StringComparer.Ordinal);

    // Every file and folder by its name as Windows sees it, and as it is written here.
    private readonly Dictionary<string, string> _names = Names(ours.Folder.Files.Keys);

    /// <summary>Replaces a record's text where it stands.</summary>
    internal void Replace(RecordText record, string text)
    {
        if (!_replaced.TryGetValue(record.File.Path, out var documents)) _replaced[record.File.Path] = documents = [];
        documents[record.Number] = text;
    }

    /// <summary>Adds a record to a file, or makes it.</summary>
    /// <returns>The file it will stand in.</returns>
    internal string Add(RecordText record, string path)
    {
        var file = Free(path, record);
        if (!_added.TryGetValue(file, out var records)) _added[file] = records = [];
        records.Add(record);
        Remember(_names, file);
        return file;
    }

    /// <summary>Adds a file as it is.</summary>
    /// <returns>The name it gets; a file that is there is never replaced.</returns>
    internal string AddFile(string path, byte[] bytes)
    {
        var file = Written(path);
        if (_names.ContainsKey(SafePath.Folded(file)) || IsBelowFile(file)) file = Beside(file, bytes);
        _whole[file] = bytes;
        Remember(_names, file);
        return file;
    }

    /// <summary>The name that a file gets when its own is taken.</summary>
    internal static string Beside(string path, byte[] bytes) =>
        $"{Path.ChangeExtension(path, null)}-{Convert.ToHexStringLower(SHA256.HashData(bytes))[..8]}{Path.GetExtension(path)}";

    /// <summary>What has to be written.</summary>
    internal IEnumerable<FileChange> Changes()
    {
        foreach (var path in _replaced.Keys.Union(_added.Keys).Order(StringComparer.Ordinal))
        {
            var added = _added.GetValueOrDefault(path) ?? [];
            var (replaced, there) = (_replaced.GetValueOrDefault(path) ?? [], ours.Files.GetValueOrDefault(path));
            if (there is not null) yield return new FileChange(path, there.With(replaced, added.Select(r => r.Text)));
            else yield return new FileChange(path, Whole(added)) { MustBeNew = true };
        }
        foreach (var (path, bytes) in _whole.OrderBy(w => w.Key, StringComparer.Ordinal)) yield return new FileChange(path, bytes) { MustBeNew = true };
    }

    // A file of which every record is new is taken as it is, with what stands between its records.
    private static byte[] Whole(List<RecordText> records)
    {
        var source = records[0].File;
        return records.All(r => r.File == source && r.Text == source.Documents.ElementAt(r.Number).Text) && records.Count == source.Documents.Count(d => d.Text.Length > 0 && d.Text.Split('\n').Any(l => l.TrimStart() is [not '#', ..]))
            ? source.With(new Dictionary<int, string>(), [])
            : Encoding.UTF8.GetBytes(string.Join("---\n", records.Select(r => r.Text)));
    }

    // The file of that name if it has room, else one beside it.
    private string Free(string path, RecordText record)
    {
        var wanted = Written(path);
        for (var number = 2; ; number++)
        {
            var isFree = !_names.ContainsKey(SafePath.Folded(wanted)) && !IsBelowFile(wanted);
            var isOpen = record.Type != RecordType.Note && (ours.Files.ContainsKey(wanted) || _added.ContainsKey(wanted)) && SizeOf(wanted) + 4L * record.Text.Length < TextFile.Largest;
            if (isFree || isOpen) return wanted;
            wanted = record.Type == RecordType.Note
                ? Written(FormattableString.Invariant($"notes/more-{number}/{record.Id}.md"))
                : FormattableString.Invariant($"{Path.ChangeExtension(Written(path), null)}-{number}.yaml");
            if (IsBelowFile(wanted)) wanted = FormattableString.Invariant($"more-{number}/{Words.Of(record.Type)}-{record.Id}.yaml");
        }
    }

    private long SizeOf(string path) =>
        ours.Folder.Files.GetValueOrDefault(path) + (_added.TryGetValue(path, out var records) ? records.Sum(r => 4L * r.Text.Length) : 0) + (_replaced.TryGetValue(path, out var texts) ? texts.Values.Sum(t => 4L * t.Length) : 0);

    private bool IsBelowFile(string path) => Above(path).Skip(1).Any(p => ours.Folder.Files.ContainsKey(p) || _added.ContainsKey(p) || _whole.ContainsKey(p));

    // The path with folders written as they are here.
    private string Written(string path)
    {
        foreach (var above in Above(path))
        {
            if (_names.TryGetValue(SafePath.Folded(above), out var name)) return name + path[above.Length..];
        }
        return path;
    }

    private static Dictionary<string, string> Names(IEnumerable<string> files)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in files) Remember(names, file);
        return names;
    }

    private static void Remember(Dictionary<string, string> names, string file)
    {
        foreach (var name in Above(file)) names.TryAdd(SafePath.Folded(name), name);
    }

    private static IEnumerable<string> Above(string path)
    {
        for (var end = path.Length; end > 0; end = path.LastIndexOf('/', end - 1)) yield return path[..end];
    }
}

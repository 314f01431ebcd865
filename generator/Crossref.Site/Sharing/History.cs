using Crossref.Core.Records;
using Crossref.Core.Storing;
using Crossref.Site.Reading;
using Crossref.Site.Sharing.Histories;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Sharing;

/// <summary>A content folder's memory of how its records came to be as they are.</summary>
public static class History
{
    // A history holds every text once, and keys that were changed with their place.
    private const long Smallest = 16 * 1024 * 1024;
    private const int MostPerByte = 64;

    /// <summary>
    /// What has to be written so that the folder remembers how its records stand now; nothing when it does already, or
    /// when it cannot be read. A copy that is to come back needs it.
    /// </summary>
    /// <param name="contentFolder">The folder.</param>
    /// <param name="today">The day of what is new.</param>
    public static IReadOnlyList<FileChange> Note(string contentFolder, DateOnly today)
    {
        var log = new DiagnosticLog();
        var texts = FolderTexts.Read(contentFolder, log);
        if (log.Found.Any(d => d.Severity == Core.Checking.Severity.Error) || texts.Library is not { } library) return [];
        var book = Load(contentFolder, texts, log);
        book.Note(texts, library, today);
        return Changes(contentFolder, texts, book, texts.Records.ToDictionary(r => r.Key, r => r.Value.Type, StringComparer.Ordinal));
    }

    /// <summary>The history that lies in a folder; a new one when it cannot be used, and then that is said.</summary>
    internal static HistoryBook Load(string contentFolder, FolderTexts texts, DiagnosticLog log)
    {
        var file = new FileInfo(Path.Combine(contentFolder, HistoryFile.Path));
        if (!file.Exists) return new HistoryBook();
        var most = Smallest + MostPerByte * texts.Folder.Files.Values.Sum();
        var fault = "is a link";
        try
        {
            if (file.LinkTarget is null && file.Directory?.LinkTarget is null)
            {
                fault = "is far larger than its records";
                if (file.Length <= most && HistoryFile.Read(File.ReadAllBytes(file.FullName), most, out fault) is { } book) return book;
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = "cannot be read";
        }
        log.Add(CombiningCodes.NoHistory, new Place(HistoryFile.Path, 0, 0), $"the history {fault}", "a new one is begun; where two copies differ, both texts are shown to be chosen from");
        return new HistoryBook();
    }

    /// <summary>What to write: the history where it changed, and a file for every record that is left to be chosen.</summary>
    internal static IReadOnlyList<FileChange> Changes(string contentFolder, FolderTexts texts, HistoryBook book, IReadOnlyDictionary<string, RecordType> records)
    {
        var changes = new List<FileChange>();
        foreach (var (name, type) in records.OrderBy(r => r.Key, StringComparer.Ordinal))
        {
            var (path, keys) = (ConflictFile.PathOf(type, name), book.Records[name].Conflicts);
            var content = keys.Count == 0 ? null : ConflictFile.Write(new Conflict(type, name, path, Shown(keys)));
            if (content is null ? texts.Folder.Files.ContainsKey(path) : !IsThere(contentFolder, path, content)) changes.Add(new FileChange(path, content));
        }
        var history = HistoryFile.Write(book);
        if (!IsThere(contentFolder, HistoryFile.Path, history)) changes.Add(new FileChange(HistoryFile.Path, history));
        return changes;
    }

    /// <summary>The keys at which somebody has to choose, as people see them; one name in two forms is one key.</summary>
    internal static IReadOnlyList<ConflictKey> Shown(IReadOnlyList<OpenKey> keys) =>
        [.. keys.GroupBy(k => Keys.Shown(k.Key), StringComparer.Ordinal).Select(g => new ConflictKey(g.Key, [.. g.SelectMany(k => k.Choices).Select(c => new ConflictChoice(c.Text, c.Library, c.Date))]))];

    private static bool IsThere(string folder, string path, byte[] content)
    {
        var file = Path.Combine(folder, path);
        return File.Exists(file) && File.ReadAllBytes(file).AsSpan().SequenceEqual(content);
    }
}

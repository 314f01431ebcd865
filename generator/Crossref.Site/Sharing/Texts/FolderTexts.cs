using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Notes;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Sharing.Texts;

/// <summary>Every record of a content folder as it is written.</summary>
internal sealed class FolderTexts
{
    // A folder that holds more than this was not made for a shop's PC.
    private const long MostBytes = 512L * 1024 * 1024;

    private readonly Dictionary<string, RecordText> _records = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FileText> _files = new(StringComparer.Ordinal);

    private FolderTexts(ContentFolder folder) => Folder = folder;

    /// <summary>Whose folder it is; null when no document says so.</summary>
    internal string? Library { get; private set; }

    /// <summary>Every record, by the name that every copy knows it by.</summary>
    internal IReadOnlyDictionary<string, RecordText> Records => _records;

    /// <summary>Every file of records or notes, by its path.</summary>
    internal IReadOnlyDictionary<string, FileText> Files => _files;

    internal ContentFolder Folder { get; }

    /// <summary>Reads a folder. What cannot be read is reported; nothing is read that is too large.</summary>
    internal static FolderTexts Read(string path, DiagnosticLog log)
    {
        var folder = ContentFolder.Open(path, log);
        var texts = new FolderTexts(folder);
        CheckNames(folder, log);
        if (folder.Files.Values.Sum() is var sum && sum > MostBytes)
            log.Add(FileCodes.TooLarge, new Place(".", 0, 0), FormattableString.Invariant($"this folder holds {sum / 1024 / 1024} MB"), "a content folder holds records and small pictures; take out what is neither");
        else texts.ReadFiles(log);
        return texts;
    }

    private static void CheckNames(ContentFolder folder, DiagnosticLog log)
    {
        var seen = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in folder.Files.Keys)
        {
            if (SafePath.Fault(path) is { } fault)
                log.Add(CombiningCodes.BadName, new Place(path, 0, 0), $"this name {fault}", "give the file another name, in plain letters, digits and dashes");
            if (path.StartsWith(Owner.Folder, StringComparison.Ordinal)) new ScalarChecker(log).CheckId(new ScalarNode(new Place(path, 0, 0), path.Split('/')[1]));
            // A folder may be written in two ways as well, so every folder is looked at.
            for (var end = path.Length; end > 0; end = path.LastIndexOf('/', end - 1))
            {
                var name = path[..end];
                if (!seen.TryAdd(SafePath.Folded(name), name) && seen[SafePath.Folded(name)] != name)
                    log.Add(CombiningCodes.BadName, new Place(path, 0, 0), $"this name differs from {seen[SafePath.Folded(name)]} by capitals alone", "Windows takes the two for one; give one of them another name");
            }
        }
    }

    private void ReadFiles(DiagnosticLog log)
    {
        var found = new List<Found>();
        var documents = new DocumentReader(log, new ReadingNotes());
        foreach (var path in Folder.Files.Keys)
        {
            var isNote = path.EndsWith(".md", StringComparison.OrdinalIgnoreCase);
            if (!isNote && !path.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) && !path.EndsWith(".yml", StringComparison.OrdinalIgnoreCase)) continue;
            if (Folder.Files[path] > TextFile.Largest)
                log.Add(FileCodes.TooLarge, new Place(path, 0, 0), "this file is over 1 MB", "split it into several files; any number is read");
            else if (TextFile.Read(Folder, path, log, out _) is { } text)
            {
                var file = isNote ? FileText.OfNote(path, Bytes(path)) : FileText.OfRecords(path, Bytes(path));
                _files[path] = file;
                if (isNote && new NoteReader(log, new ReadingNotes()).Read(path, text) is { } note)
                    found.Add(new Found(RecordType.Note, note.Id, file.Documents.First().Text, file, 0, note.Place));
                if (isNote) continue;
                foreach (var document in YamlReader.Read(path, text, log)) documents.Read(document);
                found.AddRange(Typed(file, log));
            }
        }
        Library = found.FirstOrDefault(f => f.Type == RecordType.Library && Owner.OfFile(f.File.Path) is null)?.Id;
        foreach (var one in found)
        {
            var record = new RecordText(one.Type, one.Id, Owner.OfFile(one.File.Path) ?? Library ?? "", one.Text, one.File, one.Number);
            if (!_records.TryAdd(record.Name, record))
                log.Add(CombiningCodes.Twice, one.Place, $"'{ScalarChecker.Shown(record.Name)}' is there twice, also in {_records[record.Name].File.Path}", "keep one of them");
        }
    }

    private byte[] Bytes(string path)
    {
        using var stream = Folder.OpenFile(path);
        var bytes = new byte[Math.Min(stream.Length, TextFile.Largest)];
        stream.ReadExactly(bytes);
        return bytes;
    }

    // What is wrong was said when the file was read as a whole; here each document is only asked what it is.
    private static IEnumerable<Found> Typed(FileText file, DiagnosticLog log)
    {
        var (silent, number) = (new DiagnosticLog(), 0);
        foreach (var (text, before) in file.Documents)
        {
            var documents = YamlReader.Read(file.Path, text, silent).ToList();
            if (documents.Count > 1) log.Add(CombiningCodes.Twice, new Place(file.Path, before + 1, 1), "two records stand between the same dashes", "write a line --- between them");
            else if (documents is [var document] && new DocumentReader(silent, new ReadingNotes()).Read(document) is { } raw)
                yield return new Found(raw.Type, Owner.Local(raw.Id), text, file, number, new Place(file.Path, before + raw.Map.Place.Line, raw.Map.Place.Column));
            number++;
        }
    }

    private sealed record Found(RecordType Type, string Id, string Text, FileText File, int Number, Place Place);
}

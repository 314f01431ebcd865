using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Mapping;
using Crossref.Site.Reading.Notes;
using Crossref.Site.Reading.Yaml;
using Crossref.Site.Sharing;

namespace Crossref.Site.Reading;

/// <summary>Reads a content folder: every YAML record and every Markdown note below it.</summary>
public static class ContentReader
{
    /// <summary>
    /// Reads everything that can be read and reports everything that cannot. Content never makes it throw: a broken
    /// file or record is a diagnostic, and the others are read all the same.
    /// </summary>
    /// <param name="contentFolder">The folder; <c>inbox</c> in it and names that begin with a dot are left out.</param>
    public static ReadResult Read(string contentFolder)
    {
        var log = new DiagnosticLog();
        return Read(ContentFolder.Open(contentFolder, log), log);
    }

    /// <summary>Reads a folder that was looked through already.</summary>
    internal static ReadResult Read(ContentFolder folder, DiagnosticLog log)
    {
        var notes = new ReadingNotes();
        var documents = new DocumentReader(log, notes);
        var noteReader = new NoteReader(log, notes);
        var (raw, records) = (new List<RawRecord>(), new List<IRecord>());
        foreach (var path in folder.Files.Keys)
        {
            var (isYaml, isNote) = (HasEnding(path, ".yaml") || HasEnding(path, ".yml"), HasEnding(path, ".md"));
            if (!isYaml && !isNote) continue;
            if (TextFile.Read(folder, path, log, out var guess) is not { } text)
            {
                if (isYaml) notes.LoseAll(guess);
                else notes.Lose(NoteReader.IdOf(path));
            }
            else if (isYaml)
            {
                raw.AddRange(YamlReader.Read(path, text, log).Select(documents.Read).OfType<RawRecord>());
            }
            else if (noteReader.Read(path, text) is { } note)
            {
                records.Add(note);
            }
        }
        var pictures = new PictureChecker(folder, log);
        var others = new OtherLibraries(raw);
        raw = [.. raw.Select(others.Addressed)];
        var mapper = new RecordMapper(new AddressBook(raw), log);
        records = [.. raw.Select(mapper.Map), .. records.Cast<Note>().Select(others.Addressed)];
        foreach (var record in records)
        {
            foreach (var picture in PictureChecker.In(record)) pictures.Check(picture, wordsToo: record is Note);
        }
        Conflicts.Check(folder, log);
        var library = Freeze(records, folder, log, notes);
        return new ReadResult(library, DiagnosticOrder.Sort(log.Found), notes.Context());
    }

    private static Library? Freeze(List<IRecord> records, ContentFolder folder, DiagnosticLog log, ReadingNotes notes)
    {
        var cards = records.OfType<LibraryRecord>().Where(c => !Owner.IsElsewhere(c)).ToList();
        foreach (var second in cards.Skip(1))
        {
            log.Add(FileCodes.SecondLibrary, second.Place, $"'{second.Id}' is a second library, the first is in {cards[0].Place}", "keep the one whose copy this is");
        }
        if (cards.Count > 0) return new Library(cards[0], records.Where(r => r is not LibraryRecord || Owner.IsElsewhere(r)));
        if (!notes.HasLostLibrary && folder.Exists) log.Add(FileCodes.NoLibrary, new Place(".", 0, 0), "no document says whose library this is", "add a file library.yaml with library: and title:");
        return null;
    }

    private static bool HasEnding(string path, string ending) => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
}

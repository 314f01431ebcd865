using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Notes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Sharing.Texts;

/// <summary>Reads one record's text as the reader of a folder would.</summary>
internal static class RecordReading
{
    /// <summary>What the text is; null when it is no record.</summary>
    internal static (RecordType Type, string Id)? Read(RecordType type, string id, string text, DiagnosticLog log)
    {
        if (type == RecordType.Note) return new NoteReader(log, new ReadingNotes()).Read(id + ".md", text) is null ? null : (type, id);
        return YamlReader.Read("", text, log).ToList() is [var document] && new DocumentReader(log, new ReadingNotes()).Read(document) is { } raw ? (raw.Type, raw.Id) : null;
    }
}

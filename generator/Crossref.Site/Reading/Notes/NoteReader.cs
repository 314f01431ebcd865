using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading.Mapping;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading.Notes;

/// <summary>Reads Markdown notes: the front matter as YAML, the rest for its links and pictures.</summary>
internal sealed class NoteReader(DiagnosticLog log, ReadingNotes notes)
{
    /// <summary>A note's id: the file's name without its ending.</summary>
    internal static string IdOf(string path) => Path.GetFileNameWithoutExtension(path);

    /// <summary>The note; null when it has no readable front matter.</summary>
    internal Note? Read(string path, string text)
    {
        var id = IdOf(path);
        new ScalarChecker(log).CheckId(new ScalarNode(new Place(path, 0, 0), id));
        var lines = text.Split('\n');
        var end = lines[0].TrimEnd() == "---" ? Array.FindIndex(lines, 1, l => l.TrimEnd() == "---") : -1;
        if (end < 0)
        {
            log.Add(NoteCodes.NoFrontMatter, new Place(path, 1, 1), "this note has no front matter", "begin with a line ---, then title: and about:, then a line ---");
            notes.Lose(id);
            return null;
        }
        if (Front(path, string.Join('\n', lines[..end])) is not { } front)
        {
            notes.Lose(id);
            return null;
        }
        var markdown = string.Join('\n', lines[(end + 1)..]);
        var checker = new ShapeChecker(log);
        var fields = new Fields(checker.Map(front, CatalogueShapes.NoteFront));
        notes.Remember(id, front, checker);
        var body = new NoteBody(path, markdown, end + 1, log);
        return new Note
        {
            Id = id,
            Place = new Place(path, 1, 1),
            Retired = fields.Yes("retired"),
            Title = fields.TextOr("title", id),
            About = fields.Refs("about"),
            Markdown = body.IsReadable ? markdown : "",
            LinesBefore = end + 1,
            Links = body.Links,
            Pictures = body.Pictures,
        };
    }

    private MapNode? Front(string path, string yaml)
    {
        switch (YamlReader.Read(path, yaml, log).FirstOrDefault())
        {
            case { Root: MapNode map }:
                return map;
            case { Root: { } other }:
                log.Add(YamlCodes.NotAMap, other.Place, $"front matter must be keys and values, this is {other.Form}", "write title: and about:");
                return null;
            case { Root: null }:
                return null;
            default:
                return new MapNode(new Place(path, 1, 1), []);
        }
    }
}

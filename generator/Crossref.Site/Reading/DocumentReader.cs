using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading;

/// <summary>Finds out what a document is, and checks it against its shape.</summary>
internal sealed class DocumentReader(DiagnosticLog log, ReadingNotes notes)
{
    /// <summary>The document; null when it carries no id or is of no known type.</summary>
    internal RawRecord? Read(YamlDocument document)
    {
        switch (document.Root)
        {
            case null:
                notes.LoseAll(document.Text);
                return null;
            case MapNode { Entries.Count: > 0 } map:
                return Typed(map) is var (shape, sound) ? Checked(sound, shape) : null;
            case RefusedNode:
                return null;
            default:
                log.Add(YamlCodes.NotAMap, document.Root.Place, $"a document must begin with a key and its id, this is {document.Root.Form}", "begin with the type and the id, such as part: brg-os-1203");
                return null;
        }
    }

    private (MapShape Shape, MapNode Map)? Typed(MapNode map)
    {
        var first = map.Entries[0];
        if (RecordShapes.Find(first.Key) is { } known) return (known, map);
        var other = map.Entries.FirstOrDefault(e => RecordShapes.Find(e.Key) is not null);
        var shown = ScalarChecker.Shown(first.Key);
        if (Suggest.Surely(first.Key, RecordShapes.FirstKeys) is { } meant)
        {
            log.Add(ShapeCodes.UnknownType, first.Place, $"no document begins with '{shown}'", Suggest.Hint(first.Key, RecordShapes.FirstKeys, ""));
            return (RecordShapes.Find(meant)!, map with { Entries = [first with { Key = meant }, .. map.Entries.Skip(1)] });
        }
        log.Add(ShapeCodes.UnknownType, first.Place, $"no document begins with '{shown}'",
            other is null ? $"the first key must be one of {string.Join(", ", RecordShapes.FirstKeys)}" : $"the first key says what a document is: write it before the others, such as {other.Key}:");
        if (other?.Value is ScalarNode { Text: var id }) notes.Lose(id);
        else if (first.Value is ScalarNode { Text: var firstId }) notes.Lose(firstId);
        return null;
    }

    private RawRecord? Checked(MapNode map, MapShape shape)
    {
        var checker = new ShapeChecker(log);
        var sound = checker.Map(map, shape);
        if (sound[shape.Name] is not ScalarNode { Text: var id }) return null;
        notes.Remember(id, sound, checker);
        return new RawRecord(shape.Type!.Value, id, sound);
    }
}

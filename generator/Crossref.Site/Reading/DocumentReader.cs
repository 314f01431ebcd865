using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
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
        var shown = ScalarChecker.Shown(first.Key);
        var headless = Headless(map);
        if (RecordShapes.Find(first.Key) is { } known)
        {
            if (headless.Count == 0 || map.Entries.FirstOrDefault(e => known.Find(e.Key) is null) is not { } strange) return (known, map);
            log.Add(ShapeCodes.UnknownType, first.Place, $"a document that begins with '{shown}' has no '{ScalarChecker.Shown(strange.Key)}'", BeginWith(headless));
        }
        else if (Suggest.Surely(first.Key, RecordShapes.FirstKeys) is { } meant)
        {
            log.Add(ShapeCodes.UnknownType, first.Place, $"no document begins with '{shown}'", Suggest.Hint(first.Key, RecordShapes.FirstKeys, ""));
            return (RecordShapes.Find(meant)!, map with { Entries = [first with { Key = meant }, .. map.Entries.Skip(1)] });
        }
        else if (headless.Count > 0)
        {
            log.Add(ShapeCodes.UnknownType, first.Place, $"no document begins with '{shown}'", BeginWith(headless));
        }
        else
        {
            var other = map.Entries.FirstOrDefault(e => RecordShapes.Find(e.Key) is not null);
            log.Add(ShapeCodes.UnknownType, first.Place, $"no document begins with '{shown}'",
                other is null ? $"the first key must be one of {string.Join(", ", RecordShapes.FirstKeys)}" : $"the first key says what a document is: write it before the others, such as {other.Key}:");
            if ((other ?? first).Value is ScalarNode { Text: var id }) notes.Lose(id);
        }
        headless.ForEach(s => notes.LoseIdOf(s.Type!.Value));
        return null;
    }

    // The types that know every key but whose own first key is not there: its line was left out.
    private static List<MapShape> Headless(MapNode map) =>
        [.. RecordShapes.Documents.Where(s => map[s.Name] is null && map.Entries.All(e => s.Find(e.Key) is not null))];

    private static string BeginWith(List<MapShape> shapes) => $"begin with {string.Join(": or ", shapes.Select(s => s.Name))}: and the id";

    private RawRecord? Checked(MapNode map, MapShape shape)
    {
        var checker = new ShapeChecker(log);
        var sound = checker.Map(map, shape);
        if (sound[shape.Name] is not ScalarNode { Text: var id })
        {
            notes.LoseIdOf(shape.Type!.Value);
            return null;
        }
        var address = Owner.IsShop(shape.Type!.Value) && Owner.OfFile(map.Place.File) is { } library ? Owner.Address(library, id) : id;
        notes.Remember(address, sound, checker);
        return new RawRecord(shape.Type!.Value, address, sound);
    }
}

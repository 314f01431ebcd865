using Crossref.Site.Reading.Shapes;
using Crossref.Site.Tests.Planting;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>A map of a document with its shape, and where it is.</summary>
internal sealed record MapSpot(BedDocument Document, string Path, Item Map, MapShape Shape);

/// <summary>A value of a document with its shape, and where it is. Of an entry of a list there is no key.</summary>
internal sealed record ValueSpot(BedDocument Document, string Path, Item Value, ValueShape Shape, string Name, MapShape Owner);

/// <summary>Walks through documents along their shapes.</summary>
internal static class Walker
{
    /// <summary>The document's own map and every map within it.</summary>
    internal static IEnumerable<MapSpot> Maps(BedDocument document) => Maps(document, $"{document}", document.Root, document.Shape);

    /// <summary>Every value, also the entries of lists and the values of maps without given keys.</summary>
    internal static IEnumerable<ValueSpot> Values(BedDocument document) =>
        Maps(document).SelectMany(m => m.Map.Keys!.SelectMany(e => Within(m, $"{m.Path}/{e.Key}", e.Value, m.Shape.Find(e.Key)!.Value, e.Key)));

    /// <summary>A shape and every shape within it.</summary>
    internal static IEnumerable<MapShape> Shapes(MapShape shape) =>
        [shape, .. shape.Keys.Select(k => k.Value.Map ?? k.Value.Item?.Map).OfType<MapShape>().SelectMany(Shapes)];

    private static IEnumerable<ValueSpot> Within(MapSpot map, string path, Item value, ValueShape shape, string name)
    {
        yield return new ValueSpot(map.Document, path, value, shape, name, map.Shape);
        if (shape.Kind != ValueKind.List) yield break;
        foreach (var (row, at) in value.Rows!.Select((r, i) => (r, i)))
            yield return new ValueSpot(map.Document, $"{path}/{at}", row, shape.Item!, name, map.Shape);
    }

    private static IEnumerable<MapSpot> Maps(BedDocument document, string path, Item map, MapShape shape)
    {
        yield return new MapSpot(document, path, map, shape);
        foreach (var entry in map.Keys!)
        {
            var value = shape.Find(entry.Key)!.Value;
            if ((value.Map ?? value.Item?.Map) is not { } inner) continue;
            var rows = entry.Value.Rows?.Select((r, i) => (Item: r, Path: $"{path}/{entry.Key}/{i}")) ?? [(entry.Value, $"{path}/{entry.Key}")];
            foreach (var spot in rows.Where(r => r.Item.Keys is not null).SelectMany(r => Maps(document, r.Path, r.Item, inner))) yield return spot;
        }
    }
}

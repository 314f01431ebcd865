using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Tests.Planting;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>Mistakes with keys: misspelt, unknown, missing, twice, too many of a few, too few.</summary>
internal static class KeyPlants
{
    internal static IEnumerable<Plant> In(Bed bed, MapSpot spot)
    {
        var (keys, shape) = (spot.Map.Keys!, spot.Shape);
        foreach (var entry in keys)
        {
            var isType = spot.Map == spot.Document.Root && entry == keys[0] && spot.Document.Body is null;
            yield return Plant(spot, "misspelt key", entry.Key, () => Renamed(entry, ValueSamples.Misspelt(entry.Key, shape.Names)),
                () => At(isType ? ShapeCodes.UnknownType : ShapeCodes.UnknownKey, entry.Line));
            yield return Plant(spot, "key in capitals", entry.Key, () => Renamed(entry, entry.Key.ToUpperInvariant()),
                () => At(isType ? ShapeCodes.UnknownType : ShapeCodes.UnknownKey, entry.Line));
            yield return Inserted(spot, "duplicate key", entry.Key, keys.IndexOf(entry) + 1, new Entry(entry.Key, entry.Value.Copy()), YamlCodes.RepeatedKey);
            if (shape.Find(entry.Key)!.Required)
                yield return Plant(spot, "missing required key", entry.Key, () => Taken(keys, entry), () => At(isType ? ShapeCodes.UnknownType : ShapeCodes.MissingKey, spot.Map.Line));
        }
        foreach (var (name, value) in (IEnumerable<(string, Item)>)[("xyzzy-quux", new Item { Raw = "4" }), ("xyzzy-quux", new Item { Rows = [new Item { Raw = "4" }] })])
            yield return Inserted(spot, "unknown key", name, keys.Count, new Entry(name, value), ShapeCodes.UnknownKey);
        // Where a key is asked for twice, whoever asks first says so.
        foreach (var plant in shape.Demands.Where(d => Raised(d, spot.Map)).DistinctBy(d => (d.Kind == DemandKind.AtMostOne, keys.FirstOrDefault(e => d.Keys.Contains(e.Key)))).SelectMany(d => Demanded(bed, spot, d))) yield return plant;

        Report At(DiagnosticCode code, int line) => new(code.Code, spot.Document.File, line);
    }

    /// <summary>What YAML trips over between keys.</summary>
    internal static IEnumerable<Plant> Yaml(MapSpot spot)
    {
        foreach (var entry in spot.Map.Keys!.Skip(1))
        {
            foreach (var indent in (string[])["\t", "  \t", "\t\t"])
                yield return Plant(spot, "tab in the indentation", entry.Key, () => Indented(entry, indent), () => new(YamlCodes.Tab.Code, spot.Document.File, entry.Line));
        }
        yield return Inserted(spot, "key that is no word", "[a, b]", spot.Map.Keys!.Count, new Entry("[a, b]", new Item { Raw = "4" }), YamlCodes.OddKey);
        yield return Inserted(spot, "alias for a key", "*there", spot.Map.Keys!.Count, new Entry("*there ", new Item { Raw = "4" }), YamlCodes.Alias);
    }

    // What the demand asks for is left out, or written twice over.
    private static IEnumerable<Plant> Demanded(Bed bed, MapSpot spot, Demand demand)
    {
        var keys = spot.Map.Keys!;
        var present = keys.Where(e => demand.Keys.Contains(e.Key)).ToList();
        if (demand.Kind != DemandKind.AtMostOne && present is [var only])
        {
            var (code, entry) = demand.When is { } when ? (ShapeCodes.NeedsKey, keys.Single(e => e.Key == when))
                : (demand.Keys.Count > 1 ? ShapeCodes.OneOf : ShapeCodes.NeedsKey, null);
            yield return Plant(spot, "conditional key left out", only.Key, () => Taken(keys, only), () => new(code.Code, spot.Document.File, entry?.Line ?? spot.Map.Line));
        }
        if (demand.Kind == DemandKind.AnyOf) yield break;
        foreach (var other in demand.Keys.Where(k => present.Count == 1 && k != present[0].Key))
        {
            var added = new Entry(other, new Item { Raw = bed.Existing(spot.Shape.Find(other)!.Value) ?? "5000" });
            // The one that is named second is the one too many.
            var second = demand.Keys.First(k => k == other || k == present[0].Key) == other ? present[0] : added;
            yield return Plant(spot, "both of exclusive keys", other, () => Put(keys, keys.Count, added), () => new(ShapeCodes.OneOf.Code, spot.Document.File, second.Line));
        }
    }

    private static bool Raised(Demand demand, Item map) =>
        (demand.When is null || map.Keys!.Exists(e => e.Key == demand.When && (demand.Is is null || e.Value.Raw == demand.Is))) &&
        (demand.Unless is null || !map.Keys!.Exists(e => e.Key == demand.Unless));

    private static Plant Inserted(MapSpot spot, string mistake, string name, int at, Entry entry, DiagnosticCode code) =>
        Plant(spot, mistake, name, () => Put(spot.Map.Keys!, at, entry), () => new(code.Code, spot.Document.File, entry.Line));

    private static Plant Plant(MapSpot spot, string mistake, string key, Func<Action> make, Func<Report> expected) =>
        new(mistake, $"{spot.Path}/{key}", make, expected);

    private static Action Renamed(Entry entry, string name)
    {
        var old = entry.Key;
        entry.Key = name;
        return () => entry.Key = old;
    }

    private static Action Indented(Entry entry, string indent)
    {
        entry.Indent = indent;
        return () => entry.Indent = null;
    }

    private static Action Taken(List<Entry> keys, Entry entry)
    {
        var at = keys.IndexOf(entry);
        keys.RemoveAt(at);
        return () => keys.Insert(at, entry);
    }

    private static Action Put(List<Entry> keys, int at, Entry entry)
    {
        keys.Insert(at, entry);
        return () => keys.Remove(entry);
    }
}

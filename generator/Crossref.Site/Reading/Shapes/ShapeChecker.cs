using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading.Shapes;

/// <summary>
/// Compares one document with its shape. What comes out holds known keys with readable values only; what was refused
/// stays as a <see cref="RefusedNode"/>, so that it does not count as missing as well. A word that was surely meant is
/// taken for the one written, after it was reported: one slip, one diagnostic.
/// </summary>
internal sealed class ShapeChecker(DiagnosticLog log)
{
    private readonly ScalarChecker _scalars = new(log);
    private bool _incomplete;

    /// <summary>Whether something could not be read that the record should hold.</summary>
    internal bool Incomplete => _incomplete || _scalars.Refused;

    /// <summary>Whether an id, or a whole list or map, could not be read, so that nobody knows what was there.</summary>
    internal bool Lost { get; private set; }

    /// <summary>The map as far as it is sound.</summary>
    internal MapNode Map(MapNode map, MapShape shape)
    {
        map = WithoutCommaPieces(map);
        var written = map.Entries.Select(e => e.Key).ToHashSet(StringComparer.Ordinal);
        var free = shape.Names.Where(n => !written.Contains(n)).ToList();
        var entries = new List<MapEntry>();
        foreach (var entry in map.Entries)
        {
            if (Key(entry, free, shape) is { } key)
                entries.Add(new MapEntry(key.Name, entry.Place, Value(entry.Value, key.Value, key.Name)));
        }
        var result = new MapNode(map.Place, entries);
        foreach (var key in shape.Keys.Where(k => k.Required && result[k.Name] is null))
        {
            _incomplete = true;
            Lost |= key.Value.Kind == ValueKind.Id;
            log.Add(ShapeCodes.MissingKey, map.Place, $"this {shape.Name} has no '{key.Name}'", $"add {key.Name}: {key.Says}");
        }
        Demands(result, shape);
        return result;
    }

    private KeyShape? Key(MapEntry entry, List<string> free, MapShape shape)
    {
        if (shape.Find(entry.Key) is { } known) return known;
        log.Add(ShapeCodes.UnknownKey, entry.Place, $"'{Shown(entry.Key)}' is not a key of {Article(shape.Name)}",
            Suggest.Hint(entry.Key, free, $"its keys are {string.Join(", ", shape.Names)}"));
        if (Suggest.Surely(entry.Key, free) is { } meant)
        {
            free.Remove(meant);
            return shape.Find(meant);
        }
        _incomplete = true;
        Lost |= entry.Value is not ScalarNode;
        return null;
    }

    private Node Value(Node value, ValueShape shape, string name)
    {
        var read = value is RefusedNode ? value : Read(value, shape, name);
        if (read is not RefusedNode) return read;
        _incomplete = true;
        Lost |= shape.Kind is ValueKind.Id or ValueKind.List or ValueKind.Map;
        return read;
    }

    private Node Read(Node value, ValueShape shape, string name)
    {
        if (value is ScalarNode { Text: var text } && string.IsNullOrWhiteSpace(text))
        {
            log.Add(ShapeCodes.NoValue, value.Place, $"'{name}' has no value", $"write {shape.Expects}, or leave the key out");
            return new RefusedNode(value.Place);
        }
        return shape.Kind switch
        {
            ValueKind.List => List(value, shape, name),
            ValueKind.Map when value is MapNode map => Map(map, shape.Map!),
            ValueKind.Map when value is ScalarNode && shape.Short is { } key => Map(new MapNode(value.Place, [new MapEntry(key, value.Place, value)]), shape.Map!),
            ValueKind.TextMap when value is MapNode map => Each(map, (_, v) => Value(v, Values.Text, name)),
            ValueKind.Sizes when value is MapNode map => Each(map, Size),
            ValueKind.Map or ValueKind.TextMap or ValueKind.Sizes => WrongForm(value, shape, name),
            _ when value is ScalarNode scalar => _scalars.Check(scalar, shape, name),
            _ => WrongForm(value, shape, name),
        };
    }

    private Node List(Node value, ValueShape shape, string name)
    {
        // A single value or a map can stand for one entry only where an entry may be written as one.
        var isEntry = value is ScalarNode ? shape.Item is not { Kind: ValueKind.Map, Short: null } : value is ListNode || shape.Item!.Kind == ValueKind.Map;
        if (!isEntry) return WrongForm(value, shape, name);
        if (value is ListNode list) return new ListNode(value.Place, [.. list.Items.Select(i => Value(i, shape.Item!, name))]);
        log.Add(ShapeCodes.WrongForm, value.Place, $"'{name}' must be a list, this is {value.Form}",
            value is ScalarNode s ? $"write {name}: [{Shown(s.Text)}]" : "begin each entry with a dash");
        return new ListNode(value.Place, [Value(value, shape.Item!, name)]);
    }

    private Node? Size(MapEntry entry, Node value)
    {
        var names = SizeName.All.Select(a => a.Name).ToList();
        var attribute = SizeName.Find(entry.Key);
        if (attribute is null)
        {
            log.Add(ShapeCodes.UnknownSize, entry.Place, $"'{Shown(entry.Key)}' is not a size", Suggest.Hint(entry.Key, names, $"sizes are {string.Join(", ", names)}"));
            if (Suggest.Surely(entry.Key, names) is not { } meant) return null;
            attribute = SizeName.Find(meant)!;
        }
        return new MapNode(value.Place, [new MapEntry(attribute.Name, entry.Place, Value(value, SizeShape(attribute), attribute.Name))]);
    }

    /// <summary>What the value of a size may be.</summary>
    internal static ValueShape SizeShape(SizeName size) =>
        size.Measures is { } dimension ? Values.Quantity(dimension, LeastOf(dimension)) : size.Words.Count > 0 ? Values.Word(size.Words) : Values.Text;

    // A helix or a temperature may be below zero, a length or a voltage may not.
    private static decimal LeastOf(Core.Quantities.Dimension dimension) =>
        dimension is Core.Quantities.Dimension.Angle or Core.Quantities.Dimension.Temperature ? -1_000 : 0;

    // In braces 17,02 falls into the value 17 and a key 02 without a value.
    private MapNode WithoutCommaPieces(MapNode map)
    {
        var kept = new List<MapEntry>();
        var reported = false;
        foreach (var entry in map.Entries)
        {
            var isPiece = entry.Value is ScalarNode { Text: "" } && entry.Key is [>= '0' and <= '9', ..] &&
                kept is [.., { Value: ScalarNode { Text: [.., >= '0' and <= '9'] } }];
            if (!isPiece) kept.Add(entry);
            else if (!reported)
                log.Add(ShapeCodes.DecimalComma, kept[^1].Value.Place, $"'{Shown(((ScalarNode)kept[^1].Value).Text)},{Shown(entry.Key)}' has a comma in a number",
                    "write the decimal point as a point, and large numbers without separators");
            reported = isPiece;
            _incomplete |= isPiece;
        }
        return kept.Count == map.Entries.Count ? map : new MapNode(map.Place, kept);
    }

    private MapNode Each(MapNode map, Func<MapEntry, Node, Node?> check)
    {
        var entries = new List<MapEntry>();
        foreach (var entry in WithoutCommaPieces(map).Entries)
        {
            var value = check(entry, entry.Value);
            if (value is MapNode { Entries: [var renamed] }) entries.Add(renamed);
            else if (value is not null) entries.Add(entry with { Key = ScalarChecker.OneLine(entry.Key), Value = value });
        }
        return new MapNode(map.Place, entries);
    }

    private RefusedNode WrongForm(Node value, ValueShape shape, string name)
    {
        log.Add(ShapeCodes.WrongForm, value.Place, $"'{name}' must be {shape.Expects}, this is {value.Form}",
            shape.Kind switch
            {
                ValueKind.List when shape.Item!.Map is { } map => $"begin each entry with a dash and write its keys: {string.Join(", ", map.Names)}",
                ValueKind.List => $"write each entry behind a dash: {shape.Item!.Expects}",
                ValueKind.Map => $"write it with the keys {string.Join(", ", shape.Map!.Names)}",
                ValueKind.Sizes => $"write each size by its name: {name}: {{bore: 12, outside: 28}}",
                ValueKind.TextMap => $"write words and texts: {name}: {{flange: inboard}}",
                _ => $"write {shape.Expects} behind {name}: and nothing else",
            });
        return new RefusedNode(value.Place);
    }

    private void Demands(MapNode map, MapShape shape)
    {
        var reported = new HashSet<string>(StringComparer.Ordinal);
        foreach (var demand in shape.Demands)
        {
            var present = demand.Keys.Where(k => map[k] is not null).ToList();
            var raised = demand.When is null || map[demand.When] is { } when && (demand.Is is null || when is ScalarNode { Text: var t } && t == demand.Is);
            var lifted = demand.Unless is not null && map[demand.Unless] is not null;
            if (!raised || lifted || Holds(demand.Kind, present.Count)) continue;
            // A key that is missing already is not missing once more because something else asks for it too.
            if (demand.Keys.Any(reported.Contains)) continue;
            reported.UnionWith(demand.Keys);
            _incomplete = true;
            Report(map, shape, demand, present, string.Join(" or ", demand.Keys));
        }
    }

    private static bool Holds(DemandKind kind, int count) => kind switch
    {
        DemandKind.ExactlyOne => count == 1,
        DemandKind.AtMostOne => count <= 1,
        _ => count >= 1,
    };

    private void Report(MapNode map, MapShape shape, Demand demand, List<string> present, string keys)
    {
        if (present.Count > 1)
        {
            var second = map.Entries.First(e => e.Key == present[1]);
            log.Add(ShapeCodes.OneOf, second.Place, $"this {shape.Name} has {string.Join(" and ", present)}", $"keep one of them: {keys}");
        }
        else if (demand.When is { } when)
        {
            var entry = map.Entries.First(e => e.Key == when);
            var what = demand.Is is { } word ? $"{when}: {word}" : $"'{when}'";
            log.Add(ShapeCodes.NeedsKey, entry.Place, $"{what} needs {keys}", $"add {shape.Find(demand.Keys[0])!.Name}: {shape.Find(demand.Keys[0])!.Says}");
        }
        else
        {
            var code = demand.Keys.Count > 1 ? ShapeCodes.OneOf : ShapeCodes.NeedsKey;
            log.Add(code, map.Place, $"this {shape.Name} has no {keys}", $"add {string.Join(" or ", demand.Keys.Select(k => $"{k}: {shape.Find(k)!.Says}"))}");
        }
    }

    private static string Article(string noun) => $"{(noun[0] is 'a' or 'e' or 'i' or 'o' or 'u' && noun != "unit" ? "an" : "a")} {noun}";

    private static string Shown(string text) => ScalarChecker.Shown(text);
}

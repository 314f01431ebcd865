using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;
using Crossref.Site.Recording;

namespace Crossref.Site.Sheets;

/// <summary>Makes documents out of the rows of a sheet.</summary>
internal sealed class SheetRows(Sheet sheet, ColumnMap columns, KnownRecords known, DiagnosticLog log)
{
    private readonly SheetCells _cells = new(columns.Kind, log);
    private readonly ShapeChecker _shapes = new(log);
    private readonly Dictionary<object, int> _lines = [];

    private string IdKey => columns.Kind.Shape.Name;

    /// <summary>The document of a row, its id first; null when there is none, which was reported.</summary>
    internal MapNode? Read(SheetRow row)
    {
        if (row.Cells.Skip(columns.Fields.Count).Any(c => !string.IsNullOrWhiteSpace(c)))
        {
            log.Add(SheetCodes.LongRow, sheet.PlaceOf(row, columns.Fields.Count), "this row has more cells than there are columns", "put a cell that holds a separator into quote marks, or give the column a heading");
            return null;
        }
        var start = sheet.PlaceOf(row, 0);
        // What no column gives was reported once, for the whole sheet.
        var (entries, sizes) = (columns.Missing.Select(f => new MapEntry(f.Key, start, new RefusedNode(start))).ToList(), new List<MapEntry>());
        for (var column = 0; column < columns.Fields.Count; column++)
        {
            var place = sheet.PlaceOf(row, column);
            if (columns.Fields[column] is not { } field || _cells.Read(row[column], field, place) is not { } value) continue;
            var into = field.IsSize ? sizes : entries;
            if (into.All(e => e.Key != field.Key)) into.Add(new MapEntry(field.Key, place, value));
        }
        if (sizes.Count > 0) entries.Add(new MapEntry("size", sizes[0].Place, new MapNode(sizes[0].Place, sizes)));
        if (columns.Kind == SheetKind.Bags) entries = [.. entries.Select(e => e.Key == "part" ? Meant(e) : e)];
        var map = InOrder(start, entries);
        // A row that cannot be named is looked through all the same.
        var id = Identify(row, map);
        var sound = _shapes.Map(InOrder(start, [new MapEntry(IdKey, id.Place, id), .. entries.Where(e => e.Key != IdKey)]), columns.Kind.Shape);
        return id is ScalarNode && columns.Missing.Count == 0 ? sound : null;
    }

    /// <summary>The record that the library has of the same thing; null when it is new.</summary>
    internal IRecord? OnRecord(IRecord record) => known.WithId(record.Id) is { } same && same.Type == record.Type ? same : null;

    /// <summary>The filled cells of a row in which it says something else than another record.</summary>
    internal IEnumerable<(SheetField Field, Place Place)> Differences(SheetRow row, IRecord record, IRecord other) =>
        columns.Fields.Select((f, i) => (Field: f, Index: i))
            .Where(c => c.Field is { } f && f.Key != IdKey && !string.IsNullOrWhiteSpace(row[c.Index]) && !f.IsSame(record, other))
            .Select(c => (c.Field!, sheet.PlaceOf(row, c.Index)));

    private MapNode InOrder(Place place, IReadOnlyList<MapEntry> entries) =>
        new(place, [.. columns.Kind.Shape.Keys.SelectMany(k => entries.Where(e => e.Key == k.Name))]);

    // Bags are often listed with the number of their part.
    private MapEntry Meant(MapEntry entry)
    {
        if (entry.Value is not ScalarNode { Text: var text }) return entry;
        var parts = known.Meant(text);
        if (parts.Count == 1) return entry with { Value = new ScalarNode(entry.Place, parts[0].Id) };
        if (parts.Count > 1) log.Add(SheetCodes.Unclear, entry.Place, $"'{ScalarChecker.Shown(text)}' is a number of {string.Join(" and of ", parts.Select(p => p.Id))}", "write the id of the one that is meant");
        return parts.Count == 0 ? entry : entry with { Value = new RefusedNode(entry.Place) };
    }

    private Node Identify(SheetRow row, MapNode map)
    {
        var start = sheet.PlaceOf(row, 0);
        var nothing = new RefusedNode(start);
        if (map[IdKey] is ScalarNode { Text: var written } node)
        {
            known.Take(written);
            return IsRepeated(row, written, $"'{ScalarChecker.Shown(written)}' stands in line", "keep one of the rows") ? nothing : node;
        }
        // What makes the id was refused, or has no column; either was reported.
        if (map[IdKey] is not null || map["numbers"] is RefusedNode || !columns.NamesRows) return nothing;
        return columns.Kind == SheetKind.Bags ? Bag(row, map, start) : Part(row, map, start);
    }

    private Node Bag(SheetRow row, MapNode map, Place start)
    {
        if (map.Entries.Any(e => e.Value is RefusedNode)) return new RefusedNode(start);
        var text = WrittenRecord.Normal(map);
        return IsRepeated(row, text, "this row says the same as line", "give each bag an id of its own, or make it one row with the quantity of both")
            ? new RefusedNode(start)
            : new ScalarNode(start, KnownRecords.BagId((map["part"] as ScalarNode)?.Text ?? "", text));
    }

    private Node Part(SheetRow row, MapNode map, Place start)
    {
        if (map["numbers"] is ListNode { Items: [ScalarNode { Text: var number }, ..] } numbers)
        {
            var maker = (map["maker"] as ScalarNode)?.Text;
            var key = KnownRecords.Key(maker, number);
            if (key.Number.Length > 0 && IsRepeated(row, key, $"'{ScalarChecker.Shown($"{maker} {number}".Trim())}' stands in line", "keep one of the rows")) return new RefusedNode(start);
            if ((known.WithNumber(key)?.Id ?? known.Mint($"{maker} {number}")) is { } id) return new ScalarNode(numbers.Place, id);
        }
        log.Add(SheetCodes.NoId, start, "this row has neither an id nor a number to make one of", "write the number that is moulded on the part, or an id of small letters, digits and dashes");
        return new RefusedNode(start);
    }

    private bool IsRepeated(SheetRow row, object key, string what, string hint)
    {
        if (_lines.TryAdd(key, row.Line)) return false;
        log.Add(SheetCodes.Repeated, sheet.PlaceOf(row, 0), $"{what} {_lines[key]} already", hint);
        return true;
    }
}

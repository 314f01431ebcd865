using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Tests.Schemas;

/// <summary>
/// Values for every kind of shape, as YAML. A text is a scalar as it is written; lists and maps are lists and dictionaries.
/// Not among them is what an editor and we must see differently, because YAML's own types come first in an editor:
/// numbers in forms that we refuse (<c>1e3</c>, <c>.5</c>, <c>+5</c>, <c>0x1F</c>, <c>True</c>), <c>null</c>, the id
/// <c>true</c>, a quoted number out of its range, and a day such as 2026-02-30 that only a calendar knows to be missing.
/// </summary>
internal static class Samples
{
    internal static IEnumerable<object> Valid(ValueShape shape) => shape.Kind switch
    {
        ValueKind.Id => ["abc-1", "a", "2217", new string('a', 40)],
        ValueKind.Word => shape.Words,
        ValueKind.OpenWord => [shape.Words[0], "another-word"],
        ValueKind.Quantity => ["17", "17.02 +/- 0.02", "\"17\"", .. UnitTable.Symbols(shape.Dimension).SelectMany(u => new[] { "12.5 " + u, "12.5" + u })],
        ValueKind.Number => shape.Most < 2 ? ["0.5", "1", "0", "\"0.5\""] : ["4", "0.5", "0", "\"4\""],
        ValueKind.Whole => ["1", "18000", "\"2\""],
        ValueKind.Life => ["400000 cycles", "1.5 hours", "3 sheets"],
        ValueKind.Wait => ["45 min", "1.5 h", "0 min"],
        ValueKind.TrueFalse => ["true", "false", "\"true\""],
        ValueKind.Date => ["2026-02-11", "2026-02", "2026", "unknown", "\"2026\""],
        ValueKind.List => [new List<object>(), .. Valid(shape.Item!).Select(v => new List<object> { v })],
        ValueKind.Map => shape.Short is { } key ? [Smallest(shape.Map!), .. Valid(shape.Map!.Find(key)!.Value)] : [Smallest(shape.Map!)],
        ValueKind.TextMap => [new Dictionary<string, object> { ["flange"] = "inboard", ["turn"] = "2" }],
        ValueKind.Sizes => SizeName.All.SelectMany(s => Valid(ShapeChecker.SizeShape(s)).Select(v => new Dictionary<string, object> { [s.Name] = v })),
        _ => ["plain words", "2217", "true", "17.5", "\"quoted: so\"", "007"],
    };

    internal static IEnumerable<object> Invalid(ValueShape shape)
    {
        object list = new List<object> { "x" };
        object map = new Dictionary<string, object> { ["zz-unknown"] = "x" };
        return shape.Kind switch
        {
            ValueKind.Id => ["Abc", "a--b", "-a", "a_b", "a b", new string('a', 41), "con", "lpt9", "1.5", "\"\"", list, map],
            ValueKind.Word => ["zzzz", "\"\"", list, map, .. shape.Reached],
            ValueKind.Quantity => ["17,02", "words", "17 furlongs", "17 +/- wide", "\"\"", list, map, .. shape.Least >= 0 ? new object[] { "-17", "\"-17\"" } : []],
            ValueKind.Number => ["17,02", "words", "4 mm", "-1", "\"-1\"", "\"\"", list, map, .. shape.Most < 2 ? new object[] { "1.5" } : []],
            ValueKind.Whole => ["1.5", "words", "-1", "1,000", "\"\"", list, map, .. shape.Least > 0 ? new object[] { "0" } : []],
            ValueKind.Life => ["400000", "400000 km", "-5 sheets", "many sheets", "\"\"", list, map],
            ValueKind.Wait => ["45", "45 s", "-5 min", "a while", "\"\"", list, map],
            ValueKind.TrueFalse => ["yes", "0", "\"\"", list, map],
            ValueKind.Date => ["11.2.2026", "2026-13", "2026-02-32", "2026-2-1", "26", "soon", "1850", "\"\"", list, map],
            ValueKind.List => ["words", map, .. Invalid(shape.Item!).Select(v => new List<object> { v })],
            ValueKind.Map => [list, map, .. shape.Short is null ? new object[] { "words" } : []],
            ValueKind.TextMap => ["words", list, new Dictionary<string, object> { ["flange"] = list }],
            ValueKind.Sizes => ["words", list, map, .. SizeName.All.Where(s => s.Measures is not null)
                .SelectMany(s => Invalid(ShapeChecker.SizeShape(s)).Select(v => new Dictionary<string, object> { [s.Name] = v }))],
            _ => ["\"\"", "\"  \"", list, map],
        };
    }

    /// <summary>The smallest map that keeps to its shape and has these keys.</summary>
    internal static Dictionary<string, object> Smallest(MapShape shape, params IReadOnlyList<string> with)
    {
        var map = new Dictionary<string, object>(StringComparer.Ordinal);
        foreach (var key in shape.Keys.Where(k => k.Required || with.Contains(k.Name))) map[key.Name] = Valid(key.Value).First();
        for (var again = true; again;)
        {
            again = false;
            foreach (var demand in shape.Demands.Where(d => (d.When is null || map.ContainsKey(d.When)) && (d.Unless is null || !map.ContainsKey(d.Unless))))
            {
                if (demand.Is is not null && (map[demand.When!] as string) != demand.Is) continue;
                var present = demand.Keys.Where(map.ContainsKey).ToList();
                if (present.Count == 0 && demand.Kind != DemandKind.AtMostOne) map[demand.Keys[0]] = Valid(shape.Find(demand.Keys[0])!.Value).First();
                else if (present.Count > 1 && demand.Kind != DemandKind.AnyOf) map.Remove(present.First(k => !with.Contains(k)));
                else continue;
                again = true;
            }
        }
        return map;
    }
}

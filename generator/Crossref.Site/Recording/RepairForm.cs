using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Recording;

/// <summary>The form for a repair: plain fields, and lines for what was found, removed, fitted and swapped.</summary>
public static class RepairForm
{
    private static readonly string[] NotAsked = ["repair", "date", "pictures", "retired"];
    private static readonly string[] Lists = ["found", "removed", "fitted"];

    /// <summary>The plain fields, in the order in which the record holds them.</summary>
    public static IReadOnlyList<RecordField> Fields { get; } =
    [
        .. ShopShapes.Repair.Keys.Where(k => !NotAsked.Contains(k.Name) && k.Value.Kind is not (ValueKind.List or ValueKind.Map))
            .Select(k => new RecordField(k.Name, k.Says, k.Value.Kind == ValueKind.Word ? k.Value.Words : [])),
    ];

    /// <summary>What a line of a repair is called, what it begins with, and the words it may hold.</summary>
    public static IReadOnlyList<RecordField> Lines { get; } =
    [
        new("found", "POSITION=CONDITION", ["note"]),
        new("removed", "POSITION=PART", ["to", "condition", "quantity", .. BagWords]),
        new("fitted", "POSITION=PART", ["from", "orientation", "change", "quantity"]),
        new("swapped", "ASSEMBLY", ["out", "in"]),
    ];

    /// <summary>What <c>to=bag</c> asks about the bag that it makes.</summary>
    public static IReadOnlyList<string> BagWords => ["grade", "bin", "number", "tested-by", "defect"];

    /// <summary>The repair without its id.</summary>
    /// <param name="fields">Plain fields.</param>
    /// <param name="lines">Lines by what they are called.</param>
    /// <param name="bags">The bags that pieces went into, by <see cref="BagKey"/>.</param>
    /// <param name="date">The day.</param>
    internal static MapNode Body(
        IReadOnlyDictionary<string, string> fields, ILookup<string, RepairLine> lines, IReadOnlyDictionary<string, string> bags, DateOnly date)
    {
        var form = new MapForm().Add("date", ClaimForm.Day(date));
        foreach (var field in Fields) form.Add(field.Name, fields.GetValueOrDefault(field.Name));
        foreach (var list in Lists) form.AddList(list, lines[list].Select(l => Line(list, l, bags.GetValueOrDefault(BagKey(l)))));
        if (lines["swapped"].FirstOrDefault() is { } swap)
            form.Add("swapped", new MapForm().Add("assembly", swap.Position).Add("out", swap["out"]).Add("in", swap["in"]));
        return form.InOrderOf(ShopShapes.Repair);
    }

    /// <summary>The bag for a piece that was removed, without its id.</summary>
    internal static MapNode Bag(IReadOnlyDictionary<string, string> fields, RepairLine removed, string position, string quantity, DateOnly date)
    {
        var form = new MapForm().Add("part", removed.Value).Add("quantity", quantity)
            .Add("from", fields.GetValueOrDefault("machine") ?? fields.GetValueOrDefault("unit")).Add("position", position).Add("date", ClaimForm.Day(date));
        foreach (var count in SharedShapes.CountKeys) form.Add(count, fields.GetValueOrDefault(count));
        foreach (var word in BagWords) form.Add(word, removed[word]);
        return form.InOrderOf(ShopShapes.Bag);
    }

    /// <summary>What tells the bags of one repair apart: two pieces of one position may be of two grades.</summary>
    internal static string BagKey(RepairLine line) =>
        $"{line.Position}={line.Value},{string.Join(',', line.More.OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => $"{m.Key}={m.Value}"))}";

    private static MapNode Line(string list, RepairLine line, string? bag)
    {
        var form = new MapForm().Add("position", line.Position).Add(list == "found" ? "condition" : "part", line.Value);
        foreach (var word in Lines.First(l => l.Name == list).Words.Except(BagWords))
        {
            if (word == "orientation") form.AddPairs(word, line[word]);
            else form.Add(word, word == "to" && line[word] == "bag" ? bag : line[word]);
        }
        return form.Map;
    }
}

using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic;

namespace Crossref.Site.Pages.Calculation;

/// <summary>
/// The script that hands the pages of the calculators what they read: tables, what each calculator asks for, what the
/// library has on record. Plain ASCII, so that no declared encoding matters and no character ends a text early.
/// </summary>
internal static class CalculatorScript
{
    internal const string Path = "calculator-tables.js";

    /// <summary>The script.</summary>
    /// <param name="record">What the library has on record.</param>
    /// <param name="page">Where a position's page lives, by its address.</param>
    internal static SiteFile Of(OnRecord record, Func<string, string> page)
    {
        var data = new JsonObject { ["tables"] = CalculatorTables.All(), ["declared"] = Declared(), ["record"] = Record(record, page) };
        return SiteFile.Text(Path, $"window.crossrefCalculatorTables = {data.ToJsonString()};\n");
    }

    private static JsonObject Declared() => new(Calculators.All.Select(c => KeyValuePair.Create(c.Name, (JsonNode?)Array(c.Inputs, Input))));

    private static JsonObject Input(CalculatorInput input) => new()
    {
        ["name"] = input.Name,
        ["label"] = input.Label,
        ["measures"] = input.Measures?.ToString(),
        ["example"] = input.Example,
        ["choices"] = Array(input.Choices, c => c),
        ["default"] = input.Default,
        ["required"] = input.Required,
        ["whole"] = input.Whole,
        ["mayBeZeroOrLess"] = input.MayBeZeroOrLess,
    };

    private static JsonObject Record(OnRecord record, Func<string, string> page) => new()
    {
        ["turning"] = Array(record.Turning, t => new JsonObject
        {
            ["position"] = t.Position,
            ["name"] = t.Name,
            ["family"] = t.Family,
            ["around"] = CalculatorTables.Json(t.Around),
            ["because"] = t.Because,
            ["page"] = page(t.Position),
        }),
        ["machines"] = Array(record.Machines, m => new JsonObject { ["id"] = m.Id, ["name"] = m.Name, ["family"] = m.Family }),
    };

    private static JsonArray Array<T>(IEnumerable<T> items, Func<T, JsonNode?> each) => [.. items.Select(each)];
}

using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Site.Pages.Calculation;

/// <summary>The tables of the bearing calculator.</summary>
internal static class BearingTables
{
    internal static JsonObject All() => new()
    {
        ["rows"] = Array(BearingTable.Rows, r => new JsonObject
        {
            ["designation"] = r.Designation,
            ["alsoNamed"] = Array(r.AlsoNamed, n => n),
            ["series"] = r.Series,
            ["form"] = r.Form,
            ["bore"] = (double)r.Bore,
            ["outside"] = (double)r.Outside,
            ["width"] = (double)r.Width,
            ["makers"] = r.Makers,
        }),
        ["flanges"] = Array(BearingTable.Flanges, f => new JsonObject
        {
            ["designation"] = f.Designation, ["form"] = f.Form, ["outside"] = (double)f.Outside, ["width"] = (double)f.Width,
        }),
        ["marks"] = Array(BearingTable.Marks, m => new JsonObject
        {
            ["text"] = m.Text, ["says"] = m.Says, ["value"] = m.Value, ["meaning"] = m.Meaning, ["glued"] = m.Glued,
        }),
        ["limits"] = Bands(BearingTolerance.Bands),
        ["clearances"] = Bands(RadialClearance.Bands),
    };

    private static JsonArray Bands(IReadOnlyList<ToleranceBand> bands) => Array(bands, b => new JsonObject
    {
        ["name"] = b.Name, ["over"] = b.Over, ["including"] = b.Including, ["low"] = b.Micrometres.Low, ["high"] = b.Micrometres.High,
    });

    private static JsonArray Array<T>(IEnumerable<T> items, Func<T, JsonNode?> node) => new([.. items.Select(node)]);
}

using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Limits;

namespace Crossref.Site.Pages.Calculation;

/// <summary>The bands of ISO 286, in micrometres.</summary>
internal static class LimitsTable
{
    internal static JsonArray All() => [.. SizeBand.All.Select(b => new JsonObject
    {
        ["over"] = b.Over,
        ["upTo"] = b.UpTo,
        ["widths"] = new JsonArray([.. b.Widths.Select(w => JsonValue.Create(w))]),
        ["deviations"] = new JsonObject(b.Deviations.Select(d => KeyValuePair.Create(d.Key, (JsonNode?)d.Value))),
        ["delta5"] = b.Delta5,
    })];
}

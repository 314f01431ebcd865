using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Expansion;

namespace Crossref.Site.Pages.Calculation;

/// <summary>The materials that parts are made of, with their expansion in millionths per kelvin.</summary>
internal static class MaterialTable
{
    internal static JsonArray All() => [.. Material.All.Select(m => new JsonObject
    {
        ["name"] = m.Name,
        ["label"] = m.Label,
        ["service"] = m.Service is { } service ? Ends(service) : null,
        ["ranges"] = new JsonArray([.. m.Ranges.Select(r => new JsonObject { ["from"] = r.From, ["to"] = r.To, ["coefficient"] = Ends(r.Coefficient) })]),
        ["source"] = m.Source,
        ["note"] = m.Note,
    })];

    private static JsonObject Ends(Interval interval) => new() { ["low"] = interval.Low, ["high"] = interval.High };
}

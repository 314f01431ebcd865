using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Springs;

namespace Crossref.Site.Pages.Calculation;

/// <summary>What springs are wound from, in gigapascals, and how they end.</summary>
internal static class SpringTable
{
    internal static JsonObject All() => new()
    {
        ["wires"] = new JsonArray([.. SpringWire.All.Select(w => new JsonObject
        {
            ["name"] = w.Name,
            ["label"] = w.Label,
            ["shear"] = new JsonObject { ["low"] = w.Shear.Low, ["high"] = w.Shear.High },
            ["source"] = w.Source,
        })]),
        ["ends"] = new JsonArray([.. SpringEnds.All.Select(e => new JsonObject { ["name"] = e.Name, ["idle"] = e.Idle, ["extra"] = e.Extra })]),
    };
}

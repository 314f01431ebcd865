using System.Text.Json.Nodes;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Schemas;

/// <summary>The schema of a map: its keys, which of them must be there, and what must hold between them.</summary>
internal static class MapSchema
{
    internal static JsonObject Of(MapShape shape)
    {
        var properties = new JsonObject();
        foreach (var key in shape.Keys)
        {
            var value = ValueSchema.Of(key.Value);
            value["description"] = key.Says;
            properties[key.Name] = value;
        }
        var schema = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = Names(shape.Keys.Where(k => k.Required).Select(k => k.Name)),
            ["additionalProperties"] = false,
        };
        if (shape.Demands.Count > 0) schema["allOf"] = new JsonArray([.. shape.Demands.Select(Of)]);
        return schema;
    }

    private static JsonNode Of(Demand demand)
    {
        var held = Held(demand);
        if (demand.Unless is { } unless) held = new JsonObject { ["anyOf"] = new JsonArray(Has(unless), held) };
        if (demand.When is not { } when) return held;
        var raised = Has(when);
        if (demand.Is is { } word) raised["properties"] = new JsonObject { [when] = new JsonObject { ["const"] = word } };
        return new JsonObject { ["if"] = raised, ["then"] = held };
    }

    private static JsonObject Held(Demand demand) => demand.Kind switch
    {
        DemandKind.ExactlyOne => new JsonObject { ["oneOf"] = Each(demand.Keys) },
        DemandKind.AnyOf => new JsonObject { ["anyOf"] = Each(demand.Keys) },
        _ => new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["oneOf"] = Each(demand.Keys) }, new JsonObject { ["not"] = new JsonObject { ["anyOf"] = Each(demand.Keys) } }) },
    };

    private static JsonArray Each(IEnumerable<string> keys) => new([.. keys.Select(k => (JsonNode)Has(k))]);

    private static JsonObject Has(string key) => new() { ["required"] = Names([key]) };

    private static JsonArray Names(IEnumerable<string> names) => new([.. names.Select(n => (JsonNode)JsonValue.Create(n)!)]);
}

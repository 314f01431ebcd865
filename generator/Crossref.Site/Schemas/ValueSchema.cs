using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Schemas;

/// <summary>
/// The schema of one value. Reading takes every scalar as text first, whereas an editor takes <c>230</c> for a number and
/// <c>true</c> for a truth value; so each schema allows the text and what an editor makes of it.
/// </summary>
internal static class ValueSchema
{
    private const string Digits = @"[0-9]{1,15}(\.[0-9]{1,12})?";

    internal static JsonObject Of(ValueShape shape) => shape.Kind switch
    {
        ValueKind.Id => AnyOf(
            new JsonObject
            {
                ["type"] = "string",
                ["pattern"] = "^[a-z0-9]+(-[a-z0-9]+)*$",
                ["maxLength"] = ScalarChecker.LongestId,
                ["not"] = new JsonObject { ["enum"] = Texts(ScalarChecker.DeviceNames) },
            },
            new JsonObject { ["type"] = "integer", ["minimum"] = 0 }),
        ValueKind.Word => new JsonObject { ["enum"] = Texts(shape.Words) },
        ValueKind.Quantity => Numeric("number", shape, Quantity(shape)),
        ValueKind.Number => Numeric("number", shape, $"^{Sign(shape)}{Digits}$"),
        ValueKind.Whole => Numeric("integer", shape, $@"^{Sign(shape)}[0-9]{{1,15}}$"),
        ValueKind.Life => Pattern($@"^ *{Digits} +({string.Join('|', Words.All<CountUnit>())}) *$"),
        ValueKind.Wait => Pattern($"^ *{Digits} +(min|h) *$"),
        ValueKind.TrueFalse => new JsonObject { ["enum"] = new JsonArray(true, false, "true", "false") },
        ValueKind.Date => AnyOf(
            Pattern("^(unknown|(19|20|21)[0-9]{2}(-(0[1-9]|1[0-2])(-(0[1-9]|[12][0-9]|3[01]))?)?)$"),
            new JsonObject { ["type"] = "integer", ["minimum"] = 1900, ["maximum"] = 2199 }),
        ValueKind.List => new JsonObject { ["type"] = "array", ["items"] = Of(shape.Item!) },
        ValueKind.Map when shape.Short is { } key => AnyOf(Of(shape.Map!.Find(key)!.Value), MapSchema.Of(shape.Map)),
        ValueKind.Map => MapSchema.Of(shape.Map!),
        ValueKind.TextMap => new JsonObject { ["type"] = "object", ["additionalProperties"] = Text() },
        ValueKind.Sizes => Sizes(),
        ValueKind.OpenWord => AnyOf(new JsonObject { ["enum"] = Texts(shape.Words) }, Text()),
        _ => Text(),
    };

    private static JsonObject Text() => new() { ["type"] = new JsonArray("string", "number", "boolean"), ["pattern"] = @"\S" };

    private static JsonObject Sizes()
    {
        var properties = new JsonObject();
        foreach (var size in SizeName.All) properties[size.Name] = Of(ShapeChecker.SizeShape(size));
        return new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
    }

    private static JsonObject Numeric(string type, ValueShape shape, string pattern) => AnyOf(
        new JsonObject { ["type"] = type, ["minimum"] = shape.Least, ["maximum"] = shape.Most },
        Pattern(pattern));

    private static string Quantity(ValueShape shape)
    {
        var units = string.Join('|', UnitTable.Symbols(shape.Dimension).Select(Regex.Escape));
        return $@"^\s*{Sign(shape)}{Digits}\s*((\+/-|±)\s*{Digits}\s*)?({units})?\s*$";
    }

    private static string Sign(ValueShape shape) => shape.Least < 0 ? "-?" : "";

    private static JsonObject Pattern(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };

    private static JsonObject AnyOf(params JsonNode[] schemas) => new() { ["anyOf"] = new JsonArray(schemas) };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(t => (JsonNode)JsonValue.Create(t)!)]);
}

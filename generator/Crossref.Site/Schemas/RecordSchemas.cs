using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Crossref.Site.Pages;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Schemas;

/// <summary>
/// JSON Schemas (draft 2020-12) of the records, made from the same shapes that reading goes by, for editors that
/// complete keys and mark mistakes while somebody writes.
/// </summary>
public static class RecordSchemas
{
    private const string Draft = "https://json-schema.org/draft/2020-12/schema";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One file for each record type, one for the front matter of notes, and <c>record.schema.json</c> for any record.</summary>
    public static IEnumerable<SiteFile> Files() =>
        RecordShapes.Documents.Append(CatalogueShapes.NoteFront)
            .Select(shape => SiteFile.Text(shape.Name + ".schema.json", Text(Whole(shape))))
            .Append(SiteFile.Text("record.schema.json", Text(Any())));

    /// <summary>The schema of any record.</summary>
    public static JsonObject Any()
    {
        var definitions = new JsonObject();
        foreach (var shape in RecordShapes.Documents) definitions[shape.Name] = MapSchema.Of(shape);
        return new JsonObject
        {
            ["$schema"] = Draft,
            ["title"] = "A Crossref record",
            ["description"] = "The first key says what the record is: " + string.Join(", ", RecordShapes.FirstKeys),
            ["anyOf"] = new JsonArray([.. RecordShapes.FirstKeys.Select(k => (JsonNode)new JsonObject { ["$ref"] = "#/$defs/" + k })]),
            ["$defs"] = definitions,
        };
    }

    internal static JsonObject Whole(MapShape shape)
    {
        var schema = MapSchema.Of(shape);
        schema.Insert(0, "$schema", Draft);
        schema.Insert(1, "title", $"A Crossref {shape.Name}");
        return schema;
    }

    private static string Text(JsonObject schema) => schema.ToJsonString(Readable) + "\n";
}

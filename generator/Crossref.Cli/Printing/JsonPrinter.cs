using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Crossref.Cli.Printing;

/// <summary>Prints JSON the same way everywhere.</summary>
internal static class JsonPrinter
{
    // Names and signs stay readable; the output is no part of a web page.
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static void Print(JsonNode node, TextWriter output) => output.WriteLine(node.ToJsonString(Readable));

    internal static JsonArray Array(IEnumerable<string> texts) => new([.. texts.Select(t => (JsonNode)JsonValue.Create(t)!)]);

    internal static JsonArray Array<T>(IEnumerable<T> items, Func<T, JsonNode> node) => new([.. items.Select(node)]);
}

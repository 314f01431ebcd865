using System.Globalization;
using System.Text.Json.Nodes;

namespace Crossref.Site.Tests.Schemas;

/// <summary>Writes sample trees as YAML, and as the JSON that an editor makes of it by YAML 1.2's core schema.</summary>
internal static class Yaml
{
    internal static string Text(IReadOnlyDictionary<string, object> map) => string.Concat(map.Select(p => $"{p.Key}:{Value(p.Value, 1)}"));

    internal static JsonNode Json(object value) => value switch
    {
        string scalar => Scalar(scalar),
        List<object> list => new JsonArray([.. list.Select(Json)]),
        _ => new JsonObject(((Dictionary<string, object>)value).Select(p => KeyValuePair.Create(p.Key, (JsonNode?)Json(p.Value)))),
    };

    private static string Value(object value, int level)
    {
        var indent = new string(' ', level * 2);
        return value switch
        {
            string scalar => $" {scalar}\n",
            List<object> { Count: 0 } => " []\n",
            Dictionary<string, object> { Count: 0 } => " {}\n",
            List<object> list => "\n" + string.Concat(list.Select(i => $"{indent}-{Value(i, level + 1)}")),
            Dictionary<string, object> map => "\n" + string.Concat(map.Select(p => $"{indent}{p.Key}:{Value(p.Value, level + 1)}")),
            _ => throw new InvalidOperationException(),
        };
    }

    private static JsonValue Scalar(string text) => text switch
    {
        ['"', .., '"'] => JsonValue.Create(text[1..^1])!,
        "true" or "false" => JsonValue.Create(text == "true"),
        _ when long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole) => JsonValue.Create(whole),
        _ when decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) => JsonValue.Create(number),
        _ => JsonValue.Create(text)!,
    };
}

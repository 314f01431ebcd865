using System.Text.Json;
using System.Text.Json.Nodes;
using Crossref.Core.Checking;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;
using Crossref.Site.Schemas;
using Json.Schema;

namespace Crossref.Site.Tests.Schemas;

/// <summary>The schemas and the reader agree: the same samples go through both, the schemas in a validator that knows nothing of us.</summary>
public sealed class RecordSchemasTests
{
    private static readonly Dictionary<string, JsonSchema> Schemas =
        RecordShapes.Documents.ToDictionary(s => s.Name, s => JsonSchema.FromText(RecordSchemas.Whole(s).ToJsonString()), StringComparer.Ordinal);

    public static TheoryData<string> Types => [.. RecordShapes.Documents.Select(d => d.Name)];

    [Theory]
    [MemberData(nameof(Types))]
    public void Every_key_takes_and_refuses_the_same_values(string type)
    {
        var shape = RecordShapes.Find(type)!;
        var (valid, invalid) = (0, 0);
        foreach (var (wrap, key) in Keys(shape, map => map))
        {
            foreach (var value in Samples.Valid(key))
            {
                Agree(shape, wrap(value), expected: true);
                valid++;
            }
            foreach (var value in Samples.Invalid(key))
            {
                Agree(shape, wrap(value), expected: false);
                invalid++;
            }
        }
        Assert.True(valid > 10 && invalid > 10);
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void Any_set_of_keys_is_judged_alike(string type)
    {
        var shape = RecordShapes.Find(type)!;
        var random = new Random(7);
        for (var i = 0; i < 200; i++)
        {
            var map = shape.Keys.Where((k, n) => n == 0 || random.Next(3) > (k.Required ? 0 : 1))
                .ToDictionary(k => k.Name, k => Pick(random, Samples.Valid(k.Value)), StringComparer.Ordinal);
            Assert.True(ReaderTakes(map) == SchemaTakes(shape, map), Yaml.Text(map));
        }
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void A_misspelt_or_strange_key_is_refused(string type)
    {
        var shape = RecordShapes.Find(type)!;
        var map = Samples.Smallest(shape);
        Agree(shape, map, expected: true);
        map["colour-of-the-box"] = "red";
        Agree(shape, map, expected: false);
    }

    [Fact]
    public void The_demo_library_keeps_to_the_schema_of_any_record()
    {
        var any = JsonSchema.FromText(RecordSchemas.Any().ToJsonString());
        var documents = Directory.EnumerateFiles(Path.Combine(Repository.Root, "content"), "*.yaml", SearchOption.AllDirectories)
            .SelectMany(file => YamlReader.Read(Path.GetFileName(file), File.ReadAllText(file), new DiagnosticLog())).ToList();
        Assert.True(documents.Count > 200);
        Assert.All(documents, d => Assert.True(any.Evaluate(Element(Tree(d.Root!))).IsValid, d.Text));
        Assert.False(any.Evaluate(Element(new JsonObject { ["part"] = "x", ["colour"] = "red" })).IsValid);
    }

    [Fact]
    public void Every_key_of_every_schema_says_what_it_is_for()
    {
        foreach (var file in RecordSchemas.Files())
            foreach (var properties in Objects(JsonNode.Parse(file.AsText())!).Select(o => o["properties"]).OfType<JsonObject>())
                Assert.All(properties.Where(p => p.Value!["const"] is null), p => Assert.True(p.Value!["description"] is not null || IsSize(properties), $"{file.Path}: {p.Key}"));
        Assert.Equal(RecordShapes.Documents.Count + 2, RecordSchemas.Files().Count());
    }

    // Every key at every depth, with what puts a value there into the smallest document that may hold it.
    private static IEnumerable<(Func<object, Dictionary<string, object>> Wrap, ValueShape Key)> Keys(
        MapShape shape, Func<Dictionary<string, object>, Dictionary<string, object>> around)
    {
        foreach (var key in shape.Keys)
        {
            Dictionary<string, object> Wrap(object value)
            {
                var map = Samples.Smallest(shape, key.Name);
                map[key.Name] = value;
                // What a value demands, such as a count for "ran", comes with it.
                foreach (var demand in shape.Demands.Where(d => d.When == key.Name && d.Is is not null && d.Is == value as string && !d.Keys.Any(map.ContainsKey)))
                    map[demand.Keys[0]] = Samples.Valid(shape.Find(demand.Keys[0])!.Value).First();
                return around(map);
            }
            yield return (Wrap, key.Value);
            var inner = key.Value.Kind == ValueKind.List ? key.Value.Item! : key.Value;
            if (inner.Map is not { } nested) continue;
            foreach (var deeper in Keys(nested, map => Wrap(key.Value.Kind == ValueKind.List ? new List<object> { map } : map)))
                yield return deeper;
        }
    }

    private static void Agree(MapShape shape, Dictionary<string, object> map, bool expected)
    {
        Assert.True(ReaderTakes(map) == expected, $"the reader {(expected ? "refuses" : "takes")}\n{Yaml.Text(map)}");
        Assert.True(SchemaTakes(shape, map) == expected, $"the schema {(expected ? "refuses" : "takes")}\n{Yaml.Text(map)}");
    }

    private static bool ReaderTakes(Dictionary<string, object> map)
    {
        var log = new DiagnosticLog();
        var documents = YamlReader.Read("x.yaml", Yaml.Text(map), log).ToList();
        var reader = new DocumentReader(log, new ReadingNotes());
        foreach (var document in documents) reader.Read(document);
        return !log.Found.Any(d => d.Severity == Severity.Error);
    }

    private static bool SchemaTakes(MapShape shape, Dictionary<string, object> map) => Schemas[shape.Name].Evaluate(Element(Yaml.Json(map))).IsValid;

    private static JsonElement Element(JsonNode node) => JsonSerializer.SerializeToElement(node);

    private static object Pick(Random random, IEnumerable<object> values)
    {
        var list = values.ToList();
        return list[random.Next(list.Count)];
    }

    private static JsonNode Tree(Node node) => node switch
    {
        MapNode map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Key, (JsonNode?)Tree(e.Value)))),
        ListNode list => new JsonArray([.. list.Items.Select(Tree)]),
        ScalarNode scalar => Yaml.Json(scalar.Text.Contains('"', StringComparison.Ordinal) ? $"\"{scalar.Text}\"" : scalar.Text),
        _ => throw new InvalidOperationException(),
    };

    private static bool IsSize(JsonObject properties) => properties.ContainsKey("bore");

    private static IEnumerable<JsonObject> Objects(JsonNode node) => node switch
    {
        JsonObject map => map.Select(p => p.Value).OfType<JsonNode>().SelectMany(Objects).Prepend(map),
        JsonArray list => list.OfType<JsonNode>().SelectMany(Objects),
        _ => [],
    };
}

using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;
using Crossref.Site.Tests.Mistakes;

namespace Crossref.Site.Tests.Reading;

public class ShapeTests
{
    private static readonly List<MapShape> All = [.. RecordShapes.Documents.SelectMany(Walker.Shapes)];

    [Fact]
    public void Every_record_type_but_the_note_is_a_document() =>
        Assert.Equal(Words.All<RecordType>().Where(t => t != "note"), RecordShapes.FirstKeys);

    [Fact]
    public void A_document_begins_with_the_key_that_names_it() =>
        Assert.All(RecordShapes.Documents, d => Assert.Equal((d.Name, ValueKind.Id), (d.Keys[0].Name, d.Keys[0].Value.Kind)));

    [Fact]
    public void Every_record_can_be_retired() => Assert.All(RecordShapes.Documents, d => Assert.NotNull(d.Find("retired")));

    [Fact]
    public void Demands_speak_of_keys_that_exist() =>
        Assert.All(All, s => Assert.All(s.Demands, d => Assert.All([.. d.Keys, d.When, d.Unless], k => Assert.True(k is null || s.Find(k) is not null, $"{s.Name}: {k}"))));

    [Fact]
    public void Every_key_says_what_it_is_for() =>
        Assert.All(All.SelectMany(s => s.Keys), k => Assert.False(string.IsNullOrWhiteSpace(k.Says) || string.IsNullOrWhiteSpace(k.Value.Expects)));

    [Fact]
    public void The_full_example_writes_every_key_there_is()
    {
        var written = new HashSet<(string, string)>();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Repository.SiteTests, "Full"), "*.yaml"))
        {
            foreach (var root in YamlReader.Read(file, File.ReadAllText(file), new DiagnosticLog()).Select(d => d.Root).OfType<MapNode>())
                Note(root, RecordShapes.Find(root.Entries[0].Key)!, written);
        }
        var counts = SharedShapes.CountKeys;
        var missing = All.SelectMany(s => s.Keys.Select(k => (s.Name, Key: k.Name))).Distinct()
            .Where(k => !written.Contains(k) && k.Key != "retired" && !counts.Contains(k.Key));
        Assert.Equal("", string.Join(", ", missing));
    }

    private static void Note(MapNode map, MapShape shape, HashSet<(string, string)> written)
    {
        foreach (var entry in map.Entries)
        {
            written.Add((shape.Name, entry.Key));
            var value = shape.Find(entry.Key)!.Value;
            var inner = value.Map ?? value.Item?.Map;
            if (inner is null) continue;
            foreach (var node in entry.Value is ListNode list ? list.Items : [entry.Value])
            {
                if (node is MapNode innerMap) Note(innerMap, inner, written);
            }
        }
    }
}

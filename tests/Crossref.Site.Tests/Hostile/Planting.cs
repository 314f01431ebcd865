using System.Text;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Tests.Hostile;

/// <summary>
/// Writes the full example anew with some of its values changed. It goes by the shapes, so that a key which is added
/// to the format is planted as well.
/// </summary>
internal static class Planting
{
    private static readonly string Full = Path.Combine(Repository.SiteTests, "Full");

    private static readonly List<(string File, MapNode Root)> Documents =
    [
        .. from file in Directory.EnumerateFiles(Full, "*.yaml").Order(StringComparer.Ordinal)
           from document in YamlReader.Read(file, File.ReadAllText(file), new DiagnosticLog())
           select (Path.GetFileName(file), (MapNode)document.Root!),
    ];

    /// <summary>Changes a value: the map it stands in, its key, its kind, what it is. The kind of a text map's keys is null.</summary>
    internal delegate string Change(string map, string key, ValueShape? shape, string text);

    /// <summary>The folder's files: every record in double quotes, the notes and pictures as they are.</summary>
    internal static void Lay(TemporaryFolder folder, Change change)
    {
        folder.Lay(Full, (_, bytes) => bytes);
        foreach (var file in Documents.GroupBy(d => d.File))
            folder.Write(file.Key, string.Concat(file.Select(d => Map(d.Root, RecordShapes.Find(d.Root.Entries[0].Key)!, change) + "\n---\n")));
    }

    /// <summary>Text in double quotes with every odd character as an escape.</summary>
    internal static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
            quoted.Append(c is >= ' ' and <= '~' and not ('"' or '\\') ? c.ToString() : FormattableString.Invariant($"\\u{(int)c:X4}"));
        return quoted.Append('"').ToString();
    }

    private static string Map(MapNode map, MapShape shape, Change change) => Braced(map.Entries.Select(e =>
        Quoted(e.Key) + ": " + Value(e.Value, shape.Find(e.Key)!.Value, shape.Name, e.Key, change)));

    private static string Value(Node node, ValueShape shape, string map, string key, Change change) => node switch
    {
        ListNode list => "[" + string.Join(", ", list.Items.Select(i => Value(i, shape.Item!, map, key, change))) + "]",
        MapNode inner when shape.Map is { } known => Map(inner, known, change),
        MapNode free => Braced(free.Entries.Select(e =>
            Quoted(shape.Kind == ValueKind.TextMap ? change(map, key, null, e.Key) : e.Key) + ": " + Quoted(change(map, key, InnerShape(shape, e.Key), ((ScalarNode)e.Value).Text)))),
        ScalarNode scalar when shape.Short is { } one => Quoted(change(shape.Map!.Name, one, shape.Map.Find(one)!.Value, scalar.Text)),
        ScalarNode scalar => Quoted(change(map, key, shape, scalar.Text)),
        _ => throw new InvalidOperationException($"{map}: {key}"),
    };

    private static ValueShape InnerShape(ValueShape shape, string key) =>
        shape.Kind == ValueKind.Sizes && Core.Records.SizeName.Find(key)!.Measures is { } dimension ? Values.Quantity(dimension, 0) : Values.Text;

    private static string Braced(IEnumerable<string> entries) => "{" + string.Join(", ", entries) + "}";
}

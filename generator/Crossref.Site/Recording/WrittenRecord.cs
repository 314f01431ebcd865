using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Reading.Files;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Recording;

/// <summary>A record as it is written in its file.</summary>
internal static class WrittenRecord
{
    /// <summary>The document of a record; null when its file is no longer what was read.</summary>
    internal static MapNode? Find(ContentFolder folder, IRecord record)
    {
        var log = new DiagnosticLog();
        if (!folder.Files.ContainsKey(record.Place.File) || TextFile.Read(folder, record.Place.File, log, out _) is not { } text) return null;
        return YamlReader.Read(record.Place.File, text, log).Select(d => d.Root).OfType<MapNode>()
            .FirstOrDefault(m => m.Entries is [{ Value: ScalarNode { Text: var id } }, ..] && id == record.Id);
    }

    /// <summary>What a document says, whatever the order of its keys and the look of its text.</summary>
    internal static string Normal(MapNode map) => YamlText.Write((MapNode)Sorted(map));

    private static Node Sorted(Node node) => node switch
    {
        MapNode map => new MapNode(default, [.. map.Entries.OrderBy(e => e.Key, StringComparer.Ordinal).Select(e => e with { Value = Sorted(e.Value) })]),
        ListNode list => new ListNode(default, [.. list.Items.Select(Sorted)]),
        RefusedNode => new ScalarNode(default, ""),
        _ => node,
    };
}

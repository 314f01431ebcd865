using Crossref.Site.Reading.Shapes;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Recording;

/// <summary>Puts a map together out of what somebody typed; what was left empty is left out.</summary>
internal sealed class MapForm
{
    private readonly List<MapEntry> _entries = [];

    internal MapNode Map => new(default, [.. _entries]);

    internal MapForm Add(string key, string? text) =>
        string.IsNullOrWhiteSpace(text) ? this : Add(key, new ScalarNode(default, ScalarChecker.OneLine(text).Trim()));

    internal MapForm Add(string key, MapForm map) => map._entries.Count == 0 ? this : Add(key, map.Map);

    /// <summary>"flange: inboard, hub: outboard"; what is not written so stays as it is, and the checks say what is wrong with it.</summary>
    internal MapForm AddPairs(string key, string? text)
    {
        var pairs = (text ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(':', 2)).ToList();
        if (pairs.Any(p => p.Length < 2)) return Add(key, text);
        var map = new MapForm();
        foreach (var pair in pairs) map.Add(pair[0].Trim(), pair[1]);
        return Add(key, map);
    }

    internal MapForm AddList(string key, IEnumerable<MapNode> maps) => AddItems(key, [.. maps]);

    internal MapForm AddList(string key, IEnumerable<string> texts) =>
        AddItems(key, [.. texts.Select(t => (Node)new ScalarNode(default, ScalarChecker.OneLine(t).Trim()))]);

    /// <summary>The keys in the order in which a shape names them.</summary>
    internal MapNode InOrderOf(MapShape shape) =>
        new(default, [.. shape.Keys.SelectMany(k => _entries.Where(e => e.Key == k.Name))]);

    private MapForm AddItems(string key, Node[] items) => items.Length == 0 ? this : Add(key, new ListNode(default, items));

    private MapForm Add(string key, Node value)
    {
        _entries.Add(new MapEntry(key, default, value));
        return this;
    }
}

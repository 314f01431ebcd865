using Crossref.Site.Reading;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Tests.Sharing;

/// <summary>
/// A merge of two texts over the one they came from, done slowly on parsed trees: each value by the path that leads to
/// it, a thing that was taken out whole by one side gone unless the other side changed something in it.
/// </summary>
internal static class NaiveMerge
{
    /// <summary>What the merged record says, and the paths at which the two sides differ.</summary>
    internal static (SortedDictionary<string, string> Values, SortedSet<string> Differing) Merge(string origin, string one, string other)
    {
        var (o, a, b) = (Flat(origin), Flat(one), Flat(other));
        var values = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var differing = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var path in o.Keys.Union(a.Keys).Union(b.Keys))
        {
            if (TakenOut(path, o, a) is { } mine) Whole(mine, b);
            else if (TakenOut(path, o, b) is { } theirs) Whole(theirs, a);
            else Leaf(path);
        }
        return (values, differing);

        // One side took out everything below a path.
        void Whole(string gone, SortedDictionary<string, string> kept)
        {
            var (before, now) = (Under(gone, o), Under(gone, kept));
            if (now.Count == 0 || before.SequenceEqual(now)) return;
            differing.Add(gone);
            foreach (var (path, value) in now) values[path] = value;
        }

        void Leaf(string path)
        {
            var (before, mine, theirs) = (o.GetValueOrDefault(path), a.GetValueOrDefault(path), b.GetValueOrDefault(path));
            var said = mine == theirs || theirs == before ? mine : mine == before ? theirs
                : path.EndsWith("retired", StringComparison.Ordinal) && (mine == "true" || theirs == "true") ? "true" : Both(path);
            if (said is not null) values[path] = said;
        }

        string Both(string path)
        {
            differing.Add(path);
            return "?";
        }
    }

    /// <summary>Every value of a record by its path.</summary>
    internal static SortedDictionary<string, string> Flat(string text)
    {
        var values = new SortedDictionary<string, string>(StringComparer.Ordinal);
        Walk("", Assert.Single(YamlReader.Read("", text, new DiagnosticLog())).Root!);
        return values;

        void Walk(string path, Node node)
        {
            if (node is MapNode map) foreach (var entry in map.Entries) Walk(path.Length == 0 ? entry.Key : path + " / " + entry.Key, entry.Value);
            else if (node is ListNode { Items: [MapNode, ..] } list) foreach (var item in list.Items.Cast<MapNode>()) Walk(path + " / " + ((ScalarNode)(item["position"] ?? item["assembly"])!).Text, item);
            else values[path] = node is ListNode plain ? string.Join('|', plain.Items.Select(i => ((ScalarNode)i).Text)) : ((ScalarNode)node).Text;
        }
    }

    private static List<KeyValuePair<string, string>> Under(string path, SortedDictionary<string, string> values) =>
        [.. values.Where(v => v.Key.StartsWith(path + " / ", StringComparison.Ordinal))];

    // The uppermost thing above a path that was there and has nothing left.
    private static string? TakenOut(string path, SortedDictionary<string, string> before, SortedDictionary<string, string> now)
    {
        for (var at = path.IndexOf(" / ", StringComparison.Ordinal); at >= 0; at = path.IndexOf(" / ", at + 3, StringComparison.Ordinal))
        {
            if (Under(path[..at], before).Count > 0 && Under(path[..at], now).Count == 0) return path[..at];
        }
        return null;
    }
}

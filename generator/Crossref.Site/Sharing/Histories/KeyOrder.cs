namespace Crossref.Site.Sharing.Histories;

/// <summary>The order of the keys below a key, those that were taken out among them.</summary>
internal static class KeyOrder
{
    /// <summary>
    /// Each key stands behind the one it was put behind; of several behind one, the one that came latest is nearest.
    /// Keys of two copies that were put behind each other in a circle come last, by name.
    /// </summary>
    internal static IReadOnlyList<string> Of(RecordHistory history, string parent)
    {
        var behind = history.Below[parent].ToLookup(k => history.Spots[k].After, StringComparer.Ordinal);
        var (order, done, waiting) = (new List<string>(), new HashSet<string>(StringComparer.Ordinal), new Stack<string>());
        Follow("");
        foreach (var key in history.Below[parent].Order(StringComparer.Ordinal))
        {
            if (!done.Contains(key)) waiting.Push(key);
            Drain();
        }
        return order;

        void Follow(string key)
        {
            foreach (var next in behind[key].OrderBy(k => history.Spots[k].Age).ThenByDescending(k => k, StringComparer.Ordinal)) waiting.Push(next);
            if (key.Length == 0) Drain();
        }

        // A list instead of calls: a stick may bring a chain as long as it likes.
        void Drain()
        {
            while (waiting.TryPop(out var next))
            {
                if (!done.Add(next)) continue;
                order.Add(next);
                Follow(next);
            }
        }
    }
}

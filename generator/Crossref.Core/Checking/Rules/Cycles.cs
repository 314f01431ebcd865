namespace Crossref.Core.Checking.Rules;

/// <summary>Finds circles in what leads to what.</summary>
internal static class Cycles
{
    /// <summary>
    /// At least one circle through every group of ids that lead back to themselves, each as a path that begins with
    /// its smallest id; never the same circle twice. Works without recursion, since chains may be long.
    /// </summary>
    internal static IEnumerable<IReadOnlyList<string>> Find(IEnumerable<string> ids, Func<string, IEnumerable<string>> next)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var start in ids)
        {
            var path = new List<string>();
            var depth = new Dictionary<string, int>(StringComparer.Ordinal);
            var open = new Stack<IEnumerator<string>>();
            if (!done.Contains(start)) Enter(start);
            while (open.Count > 0)
            {
                if (!open.Peek().MoveNext())
                {
                    open.Pop();
                    done.Add(path[^1]);
                    depth.Remove(path[^1]);
                    path.RemoveAt(path.Count - 1);
                }
                else if (depth.TryGetValue(open.Peek().Current, out var at))
                {
                    var circle = FromSmallest(path[at..]);
                    if (seen.Add(string.Join(' ', circle))) yield return circle;
                }
                else if (!done.Contains(open.Peek().Current))
                {
                    Enter(open.Peek().Current);
                }
            }

            void Enter(string id)
            {
                depth.Add(id, path.Count);
                path.Add(id);
                open.Push(next(id).GetEnumerator());
            }
        }
    }

    /// <summary>"a → b → a".</summary>
    internal static string Text(IReadOnlyList<string> circle) => string.Join(" → ", [.. circle, circle[0]]);

    private static List<string> FromSmallest(List<string> circle)
    {
        var smallest = circle.IndexOf(circle.Min(StringComparer.Ordinal)!);
        return [.. circle[smallest..], .. circle[..smallest]];
    }
}

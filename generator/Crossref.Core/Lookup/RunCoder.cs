using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>
/// Sets of entries as text: runs of neighbours, each as the distance from the end of the one before
/// and its length. Entries are ordered by type and kind, so that a filter is a handful of runs.
/// </summary>
internal static class RunCoder
{
    /// <summary>Splits a rising list of entries into texts of about <paramref name="limit"/> characters at most.</summary>
    public static IEnumerable<string> Chunks(IReadOnlyList<int> entries, int limit)
    {
        var text = new StringBuilder();
        var end = 0;
        for (var i = 0; i < entries.Count;)
        {
            var first = entries[i];
            var next = first;
            for (; i < entries.Count && entries[i] == next; i++)
            {
                next++;
            }

            Radix.Append(text, first - end);
            Radix.Append(text, next - first);
            end = next;
            if (text.Length > limit - 16)
            {
                yield return text.ToString();
                text.Clear();
                end = 0;
            }
        }

        if (text.Length > 0)
        {
            yield return text.ToString();
        }
    }

    /// <summary>Marks the entries of a text.</summary>
    public static void Mark(string text, bool[] marks)
    {
        var at = 0;
        var end = 0;
        while (at < text.Length)
        {
            var first = end + Radix.Read(text, ref at);
            end = first + Radix.Read(text, ref at);
            Array.Fill(marks, true, first, end - first);
        }
    }
}

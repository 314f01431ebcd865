using System.Text;

namespace Crossref.Core.Lookup;

/// <summary>
/// Lists of postings as text: for each run of one level the level, the length of the run, and the entries
/// as distances (the first from 0).
/// </summary>
internal static class PostingCoder
{
    /// <summary>Splits a list into texts of at most <paramref name="limit"/> characters, none empty.</summary>
    /// <param name="postings">Equal levels side by side, entries rising within a level.</param>
    /// <param name="limit">The longest text; a single posting may exceed it.</param>
    public static IEnumerable<(int Count, string Text)> Chunks(IReadOnlyList<Posting> postings, int limit)
    {
        var start = 0;
        while (start < postings.Count)
        {
            var end = FitFrom(postings, start, limit);
            yield return (end - start, Encode(postings, start, end));
            start = end;
        }
    }

    /// <summary>Reads a list from a place in a text to its end.</summary>
    public static IEnumerable<Posting> Decode(string text, int at = 0)
    {
        while (at < text.Length)
        {
            var level = Radix.Read(text, ref at);
            var entry = 0;
            for (var left = Radix.Read(text, ref at); left > 0; left--)
            {
                entry += Radix.Read(text, ref at);
                yield return new Posting(level, entry);
            }
        }
    }

    private static int FitFrom(IReadOnlyList<Posting> postings, int start, int limit)
    {
        var length = 0;
        for (var i = start; i < postings.Count; i++)
        {
            var newRun = i == start || postings[i].Level != postings[i - 1].Level;
            length += newRun
                ? Radix.Length(postings[i].Level) + RunLengthRoom + Radix.Length(postings[i].Entry)
                : Radix.Length(postings[i].Entry - postings[i - 1].Entry);
            if (length > limit && i > start)
            {
                return i;
            }
        }

        return postings.Count;
    }

    // The length of a run is not known while measuring; four characters hold a million.
    private const int RunLengthRoom = 4;

    private static string Encode(IReadOnlyList<Posting> postings, int start, int end)
    {
        var text = new StringBuilder();
        while (start < end)
        {
            var level = postings[start].Level;
            var runEnd = start + 1;
            while (runEnd < end && postings[runEnd].Level == level)
            {
                runEnd++;
            }

            Radix.Append(text, level);
            Radix.Append(text, runEnd - start);
            for (var last = 0; start < runEnd; start++)
            {
                Radix.Append(text, postings[start].Entry - last);
                last = postings[start].Entry;
            }
        }

        return text.ToString();
    }
}

namespace Crossref.Core.Checking;

/// <summary>Finds what somebody probably meant by a word that is not known.</summary>
public static class Suggest
{
    private const int Most = 3;

    // Longer than any id or address; comparing longer text takes time and nobody meant it as one.
    private const int Longest = 160;

    /// <summary>
    /// The known words nearest to this one, nearest first, ties in ordinal order; at most three. Near is two slips of
    /// the finger (one in words of up to three letters), in long words a third of the length; case does not count.
    /// </summary>
    public static IReadOnlyList<string> Nearest(string word, IEnumerable<string> known)
    {
        if (word.Length > Longest) return [];
        var limit = word.Length <= 3 ? 1 : Math.Max(2, word.Length / 3);
        var lower = word.ToLowerInvariant();
        return
        [
            .. known.Distinct(StringComparer.Ordinal)
                .Where(k => Math.Abs(k.Length - word.Length) <= limit)
                .Select(k => (Word: k, Distance: Distance(lower, k.ToLowerInvariant())))
                .Where(k => k.Distance <= limit && k.Distance < k.Word.Length)
                .OrderBy(k => k.Distance)
                .ThenBy(k => k.Word, StringComparer.Ordinal)
                .Take(Most)
                .Select(k => k.Word),
        ];
    }

    /// <summary>
    /// The one known word that was surely meant: at most two slips away and nearer than every other. Null when there
    /// is none. Reading goes on with it after the mistake was reported, so that one slip is one diagnostic.
    /// </summary>
    public static string? Surely(string word, IReadOnlyCollection<string> known)
    {
        var lower = word.ToLowerInvariant();
        var near = Nearest(word, known).Select(k => (Word: k, Distance: Distance(lower, k.ToLowerInvariant()))).ToList();
        return near is [(var best, <= 2), ..] && (near.Count == 1 || near[1].Distance > near[0].Distance) ? best : null;
    }

    /// <summary>"did you mean 'a' or 'b'?", or what to say when nothing is near.</summary>
    public static string Hint(string word, IEnumerable<string> known, string otherwise)
    {
        var near = Nearest(word, known);
        return near.Count == 0 ? otherwise : $"did you mean {string.Join(" or ", near.Select(n => $"'{n}'"))}?";
    }

    /// <summary>
    /// Optimal string alignment distance: insertions, deletions, changed letters and swapped neighbours, no part of
    /// the word touched twice.
    /// </summary>
    public static int Distance(string left, string right)
    {
        var (before, last, row) = (new int[right.Length + 1], new int[right.Length + 1], new int[right.Length + 1]);
        for (var j = 0; j <= right.Length; j++) last[j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var change = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }
            (before, last, row) = (last, row, before);
        }
        return last[right.Length];
    }
}

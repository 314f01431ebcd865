using System.Text;

namespace Crossref.Core.Records;

/// <summary>The words that records and pages use for the values of our enumerations: <c>FitsWithChange</c> is "fits-with-change".</summary>
public static class Words
{
    /// <summary>The word for a value.</summary>
    public static string Of<T>(T value) where T : struct, Enum => Table<T>.Words[value];

    /// <summary>All words of an enumeration, in its order.</summary>
    public static IReadOnlyList<string> All<T>() where T : struct, Enum => Table<T>.Ordered;

    /// <summary>The value of a word; null when the enumeration has no such word.</summary>
    public static T? Parse<T>(string word) where T : struct, Enum =>
        Table<T>.Values.TryGetValue(word, out var value) ? value : null;

    private static string Dashed(string name)
    {
        var text = new StringBuilder();
        foreach (var c in name)
        {
            if (char.IsUpper(c) && text.Length > 0) text.Append('-');
            text.Append(char.ToLowerInvariant(c));
        }
        return text.ToString();
    }

    private static class Table<T> where T : struct, Enum
    {
        internal static readonly Dictionary<T, string> Words = Enum.GetValues<T>().ToDictionary(v => v, v => Dashed(v.ToString()));
        internal static readonly Dictionary<string, T> Values = Words.ToDictionary(p => p.Value, p => p.Key, StringComparer.Ordinal);
        internal static readonly IReadOnlyList<string> Ordered = [.. Enum.GetValues<T>().Select(v => Words[v])];
    }
}

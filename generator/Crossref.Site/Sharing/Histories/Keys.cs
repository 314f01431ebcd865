namespace Crossref.Site.Sharing.Histories;

/// <summary>
/// Names of the pieces of a record: a key's own lines go by the keys that lead to it, its comments and the column of
/// what is below it by that with an ending. The signs between cannot stand in a record.
/// </summary>
internal static class Keys
{
    internal const string Top = "";
    private const char Below = '\u001f';

    /// <summary>A text that is not taken apart.</summary>
    internal const string Whole = "\u001f=";
    private const string CommentEnd = "\u001e#";
    private const string IndentEnd = "\u001e~";

    internal static string Child(string parent, string key) => parent + Below + key;

    internal static string Comment(string key) => key + CommentEnd;

    internal static string Indent(string key) => key + IndentEnd;

    internal static bool IsComment(string key) => key.EndsWith(CommentEnd, StringComparison.Ordinal);

    internal static bool IsIndent(string key) => key.EndsWith(IndentEnd, StringComparison.Ordinal);

    /// <summary>Whether it is a key's own lines.</summary>
    internal static bool IsOwn(string key) => key.Length > 0 && !IsComment(key) && !IsIndent(key);

    /// <summary>The key without the ending for comments or columns.</summary>
    internal static string Owner(string key) => IsComment(key) ? key[..^CommentEnd.Length] : IsIndent(key) ? key[..^IndentEnd.Length] : key;

    /// <summary>The key above.</summary>
    internal static string Parent(string key) => key[..key.LastIndexOf(Below)];

    /// <summary>Every key above, the nearest first, without the record itself.</summary>
    internal static IEnumerable<string> Above(string key)
    {
        for (var at = key.LastIndexOf(Below); at > 0; at = key.LastIndexOf(Below, at - 1)) yield return key[..at];
    }

    /// <summary>The last name, with its sign.</summary>
    internal static string Last(string key) => key[(key.LastIndexOf(Below) + 1)..];

    /// <summary>For people: <c>assemblies / fold-head / positions / roller-2-gear / listed</c>.</summary>
    internal static string Shown(string key) => key.Length == 0 ? "" : string.Join(" / ", Owner(key).Split(Below).Skip(1).Select(k => k[1..]));
}

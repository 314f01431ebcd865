namespace Crossref.Site.Pages.Pieces;

/// <summary>Which way round, in words.</summary>
internal static class OrientationText
{
    /// <summary>"flange inboard, hub outboard"; null when nothing is on record.</summary>
    internal static string? Of(IReadOnlyDictionary<string, string> orientation) => orientation.Count == 0
        ? null
        : string.Join(", ", orientation.OrderBy(o => o.Key, StringComparer.Ordinal).Select(o => $"{o.Key.Replace('-', ' ')} {o.Value}"));
}

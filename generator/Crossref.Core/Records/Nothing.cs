namespace Crossref.Core.Records;

/// <summary>Shared empty collections.</summary>
internal static class Nothing
{
    internal static IReadOnlyDictionary<string, string> Texts { get; } = new Dictionary<string, string>();
    internal static IReadOnlyDictionary<string, Size> Sizes { get; } = new Dictionary<string, Size>();
}

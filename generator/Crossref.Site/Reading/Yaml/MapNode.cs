using Crossref.Core.Records;

namespace Crossref.Site.Reading.Yaml;

/// <summary>Keys and values in the order they are written; no key twice.</summary>
internal sealed record MapNode(Place Place, IReadOnlyList<MapEntry> Entries) : Node(Place)
{
    internal override string Form => "a map of keys";

    /// <summary>The value of a key; null when it is not written.</summary>
    internal Node? this[string key] => Entries.FirstOrDefault(e => e.Key == key)?.Value;
}

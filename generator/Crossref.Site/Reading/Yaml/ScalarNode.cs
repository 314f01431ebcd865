using Crossref.Core.Records;

namespace Crossref.Site.Reading.Yaml;

/// <summary>A single value, always text.</summary>
internal sealed record ScalarNode(Place Place, string Text) : Node(Place)
{
    internal override string Form => "a single value";
}

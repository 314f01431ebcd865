using Crossref.Core.Records;

namespace Crossref.Site.Reading.Yaml;

/// <summary>A list.</summary>
internal sealed record ListNode(Place Place, IReadOnlyList<Node> Items) : Node(Place)
{
    internal override string Form => "a list";
}

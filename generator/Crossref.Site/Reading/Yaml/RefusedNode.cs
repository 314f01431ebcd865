using Crossref.Core.Records;

namespace Crossref.Site.Reading.Yaml;

/// <summary>A value that was reported and is not looked at again.</summary>
internal sealed record RefusedNode(Place Place) : Node(Place)
{
    internal override string Form => "nothing";
}

using Crossref.Core.Records;

namespace Crossref.Site.Reading.Yaml;

/// <summary>One value of a document and where it begins.</summary>
internal abstract record Node(Place Place)
{
    /// <summary>"a list" and the like, for messages.</summary>
    internal abstract string Form { get; }
}

using Crossref.Core.Records;

namespace Crossref.Site.Reading.Yaml;

/// <summary>One key and its value.</summary>
internal sealed record MapEntry(string Key, Place Place, Node Value);

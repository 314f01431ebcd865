using Crossref.Core.Records;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading;

/// <summary>A document after its shape was checked, before it becomes a record.</summary>
/// <param name="Type">What it is.</param>
/// <param name="Id">Its id, as written.</param>
/// <param name="Map">Its keys with readable values.</param>
internal sealed record RawRecord(RecordType Type, string Id, MapNode Map);

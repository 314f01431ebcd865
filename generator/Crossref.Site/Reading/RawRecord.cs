using Crossref.Core.Records;
using Crossref.Site.Reading.Yaml;

namespace Crossref.Site.Reading;

/// <summary>A document after its shape was checked, before it becomes a record.</summary>
/// <param name="Type">What it is.</param>
/// <param name="Id">Its id, as it is addressed from here: <c>library:id</c> for another library's shop record.</param>
/// <param name="Map">Its keys with readable values.</param>
internal sealed record RawRecord(RecordType Type, string Id, MapNode Map);

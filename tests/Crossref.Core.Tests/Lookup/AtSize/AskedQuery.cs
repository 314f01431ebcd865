using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>A query that somebody in the shop might ask.</summary>
/// <param name="Sort">What sort of query it is, such as <c>prefix</c>.</param>
/// <param name="Query">The query.</param>
/// <param name="Meant">The entry that was in mind; null when there is none.</param>
public sealed record AskedQuery(string Sort, LookupQuery Query, LookupEntry? Meant);

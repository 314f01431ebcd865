using Crossref.Site.Writing;

namespace Crossref.Site.Sharing;

/// <summary>What packing came to.</summary>
/// <param name="Changes">The files.</param>
/// <param name="Tools">The systems whose tool is on the stick.</param>
public sealed record StickReport(SiteChanges Changes, IReadOnlyList<string> Tools);

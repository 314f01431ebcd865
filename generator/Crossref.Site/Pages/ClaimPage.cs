using Crossref.Core.Records;

namespace Crossref.Site.Pages;

/// <summary>One page of claims.</summary>
/// <param name="Path">Where it lives.</param>
/// <param name="Claims">Newest first.</param>
public sealed record ClaimPage(string Path, IReadOnlyList<Claim> Claims);

namespace Crossref.Site.Writing;

/// <summary>What writing a site came to.</summary>
/// <param name="Files">Files the site has.</param>
/// <param name="Written">Files that were new or different.</param>
/// <param name="Removed">Files that are no longer part of it.</param>
public sealed record SiteChanges(int Files, int Written, int Removed);

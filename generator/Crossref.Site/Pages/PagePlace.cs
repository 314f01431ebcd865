namespace Crossref.Site.Pages;

/// <summary>A page, or a place on it.</summary>
/// <param name="Path">Relative to the site's root, with forward slashes.</param>
/// <param name="Fragment">The id of an element on it; null for the page as a whole.</param>
public readonly record struct PagePlace(string Path, string? Fragment = null)
{
    /// <summary>The path, with the fragment after a number sign.</summary>
    public override string ToString() => Fragment is null ? Path : Path + "#" + Fragment;
}

namespace Crossref.Site.Pages.Views;

/// <summary>A picture.</summary>
/// <param name="Href">Its file; null when it cannot be shown.</param>
/// <param name="Shows">What it shows, in words.</param>
public sealed record PictureView(string? Href, string Shows);

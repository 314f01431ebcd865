namespace Crossref.Site.Pages.Views;

/// <summary>Every hazard.</summary>
/// <param name="Hazards">The hazards.</param>
public sealed record CautionsView(IReadOnlyList<HazardEntry> Hazards);

namespace Crossref.Site.Pages.Views;

/// <summary>The page on which a finding is recorded; its form is filled by scripts.</summary>
/// <param name="Library">The library into which it goes.</param>
public sealed record RecordView(string Library);

namespace Crossref.Site.Pages.Views;

/// <summary>A claim or repair among the newest.</summary>
/// <param name="Date">When.</param>
/// <param name="Record">The claim or repair.</param>
/// <param name="Text">What it says.</param>
public sealed record NewsLine(string Date, Link Record, Phrase Text);

namespace Crossref.Site.Pages.Views;

/// <summary>One counter reading.</summary>
/// <param name="Date">When.</param>
/// <param name="Count">What it showed.</param>
/// <param name="Counter">Which counter.</param>
/// <param name="Since">How far it rose since the reading before; empty where that cannot be said.</param>
public sealed record ReadingRow(string Date, string Count, string Counter, string Since);

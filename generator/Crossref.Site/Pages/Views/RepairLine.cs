namespace Crossref.Site.Pages.Views;

/// <summary>A repair in a list.</summary>
/// <param name="Repair">The repair.</param>
/// <param name="Date">When.</param>
/// <param name="On">The machine or unit.</param>
/// <param name="Story">What happened, in a line.</param>
/// <param name="Outcome">How it ended.</param>
public sealed record RepairLine(Link Repair, string Date, Link On, string Story, string Outcome);

namespace Crossref.Site.Pages.Views;

/// <summary>One number that a part goes by.</summary>
/// <param name="Number">The number.</param>
/// <param name="What">What it is to the part.</param>
/// <param name="Source">Where it was read.</param>
public sealed record NumberRow(string Number, string What, Link? Source);

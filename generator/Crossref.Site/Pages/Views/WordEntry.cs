namespace Crossref.Site.Pages.Views;

/// <summary>A word and its meaning.</summary>
/// <param name="Anchor">The id of its place on the page.</param>
/// <param name="Word">The word.</param>
/// <param name="Look">A class for the look of the word.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="Accepts">Whether it counts as an answer in this library.</param>
public sealed record WordEntry(string Anchor, string Word, string Look, string Meaning, bool Accepts);

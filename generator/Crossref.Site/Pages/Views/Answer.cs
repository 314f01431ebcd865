namespace Crossref.Site.Pages.Views;

/// <summary>A position in a list: what fits there, and what of it is in the house.</summary>
/// <param name="Position">The position.</param>
/// <param name="Best">The best accepted part; null when there is none.</param>
/// <param name="Standing">The word for its standing.</param>
/// <param name="InHouse">How many usable pieces of it there are.</param>
/// <param name="CheckFirst">What has to be checked first; empty for nothing.</param>
/// <param name="Safety">Whether only the maker's document counts.</param>
public sealed record Answer(Link Position, PartLine? Best, Link? Standing, int InHouse, string CheckFirst, bool Safety);

namespace Crossref.Site.Pages.Views;

/// <summary>A position that a part fits, may be tried at, or does not fit.</summary>
/// <param name="Position">The position.</param>
/// <param name="Family">The family.</param>
/// <param name="Assembly">The assembly.</param>
/// <param name="Standing">The word for its standing there.</param>
/// <param name="Reason">Why, in a sentence.</param>
/// <param name="CheckFirst">What has to be checked first; empty for nothing.</param>
/// <param name="Machines">Machines in which it is an answer although it is none for every machine.</param>
public sealed record WhereRow(Link Position, Link Family, string Assembly, Link Standing, string Reason, string CheckFirst, IReadOnlyList<Link> Machines);

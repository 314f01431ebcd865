namespace Crossref.Site.Pages.Views;

/// <summary>What the words mean.</summary>
/// <param name="Ladder">What stands, the strongest first.</param>
/// <param name="Others">What does not stand, or not as an answer.</param>
/// <param name="Relations">One part in place of another.</param>
/// <param name="Grades">How good a spare is.</param>
/// <param name="AcceptFrom">The lowest word that counts as an answer here.</param>
/// <param name="Proving">What a run must reach.</param>
public sealed record StandingsView(
    IReadOnlyList<WordEntry> Ladder, IReadOnlyList<WordEntry> Others, IReadOnlyList<WordEntry> Relations, IReadOnlyList<WordEntry> Grades,
    string AcceptFrom, IReadOnlyList<Pair> Proving);

using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>The words for what evidence comes to, and what each means.</summary>
internal static class StandingWords
{
    /// <summary>Every word for something that stands, the strongest first.</summary>
    internal static IReadOnlyList<Pair> Ladder { get; } =
    [
        Word(Basis.Documented, "The maker's own list, manual or bulletin names it for this place, or a standard does."),
        Word(Basis.Proven, "It ran half of a normal life with its neighbours undamaged, or long enough twice: in two machines, or in two shops."),
        Word(Basis.Ran, "It was fitted and ran with paper, and somebody read the counter."),
        Word(Basis.Seated, "It was fitted and turned by hand, or ran too short to say more."),
        Word(Basis.Moulded, "The same number is moulded or printed on both."),
        Word(Basis.Measured, "Every size that decides was measured and agrees."),
        Word(Basis.Offered, "Somebody sells it for this."),
        Word(Basis.Told, "Somebody said so, and that is all there is."),
    ];

    /// <summary>Words for what does not stand, or not as an answer.</summary>
    internal static IReadOnlyList<Pair> Others { get; } =
    [
        new Pair(StandingWord.Lead, "Something to try, never an answer: more than one substitution lies between, or the two only share another place, or have the same sizes."),
        new Pair(StandingWord.Disputed, "Yes and no rest on evidence of the same strength. Both are shown, and what tells them apart if anything does."),
        new Pair(StandingWord.RuledOut, "The no is stronger, or a size that must match differs. Where safety is concerned, any no is enough."),
    ];

    /// <summary>
    /// Words for one part in place of another. Interchangeable, substitute and replacement as in MIL-STD-280A, clause 3.2
    /// (its sense from memory, not its sentences).
    /// </summary>
    internal static IReadOnlyList<Pair> Relations { get; } =
    [
        new Pair("interchangeable", "Either may go in for the other, everywhere it is said, without selecting and without altering anything."),
        new Pair("substitute", "One may go in for the other, but only that way round, only in some machines, or only after a change."),
        new Pair("replacement", "The maker sends the one in place of the other from now on. Whether the earlier one still goes in where the later one sat is not said."),
    ];

    /// <summary>How good a spare is, best first (common practice in the trade).</summary>
    internal static IReadOnlyList<Pair> Grades { get; } =
    [
        new Pair("new sealed", "As the maker packed it."),
        new Pair("new opened", "New, but somebody has had it in the hand."),
        new Pair("pulled running", "Taken out of a machine that ran with it."),
        new Pair("bench checked", "Used, and somebody tested it on the bench."),
        new Pair("runner", "Good for one job, to get the work out."),
        new Pair("core", "Worn out; kept for rebuilding. Never counted as in the house."),
        new Pair("sample", "Kept for measuring. Never counted as in the house."),
    ];

    /// <summary>A word as a link to what it means. Continuous, thin and broken lines say in the look what the word says.</summary>
    internal static Link Link(PageLinks links, string word, string look) =>
        new(links.Href(PageMap.Overview("standings")) + "#" + PageMap.Anchor(word.Replace(' ', '-')), word, "standing " + look);

    internal static Link Of(PageLinks links, Candidate candidate) =>
        Link(links, candidate.Standing, candidate.IsLead ? "lead" : candidate.Accepted ? "accepted" : "stands");

    internal static Link OfRefusal(PageLinks links, bool disputed) =>
        disputed ? Link(links, StandingWord.Disputed, "disputed") : Link(links, StandingWord.RuledOut, "ruled-out");

    private static Pair Word(Basis basis, string meaning) => new(Words.Of(basis), meaning);
}

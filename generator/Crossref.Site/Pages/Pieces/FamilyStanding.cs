using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Site.Pages.Pieces;

/// <summary>How a part stands in a family, over all its positions there.</summary>
/// <param name="Word">The best word it has there.</param>
/// <param name="Look">The look of that word.</param>
/// <param name="Order">The word's place among all words, 1 for the best.</param>
/// <param name="Positions">Addresses of the positions at which it stands so.</param>
internal sealed record FamilyStanding(string Word, string Look, int Order, IReadOnlyList<string> Positions)
{
    /// <summary>Every part and family of which anything is said, from the answers without a machine.</summary>
    internal static Dictionary<(string Part, string Family), FamilyStanding> Of(Library library, IEnumerable<FitsAnswer> answers) =>
        answers.SelectMany(At)
            .GroupBy(x => (x.Part, library.Positions[x.Position].Family))
            .ToDictionary(g => g.Key, g => g.GroupBy(x => (x.Order, x.Word, x.Look)).MinBy(same => same.Key.Order)!)
            .ToDictionary(p => p.Key, p => new FamilyStanding(p.Value.Key.Word, p.Value.Key.Look, p.Value.Key.Order, [.. p.Value.Select(x => x.Position)]));

    // Accepted words before those that only stand; then leads, disputes, and what is ruled out.
    private static IEnumerable<(string Part, string Position, string Word, string Look, int Order)> At(FitsAnswer answer)
    {
        foreach (var c in answer.Candidates)
        {
            var order = c.IsLead ? 17 : (c.Accepted ? 0 : 8) + 1 + Basis.Documented - c.Weakest;
            yield return (c.Part, answer.Position, c.Standing, c.IsLead ? "lead" : c.Accepted ? "accepted" : "stands", order);
        }
        foreach (var d in answer.Disputed) yield return (d.Part, answer.Position, StandingWord.Disputed, "disputed", 18);
        foreach (var r in answer.RuledOut) yield return (r.Part, answer.Position, StandingWord.RuledOut, "ruled-out", 19);
    }
}

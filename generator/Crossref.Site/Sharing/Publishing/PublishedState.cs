using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Site.Sharing.Publishing;

/// <summary>
/// What a library said when a stick was last packed: how every part stood at every position, without a machine, and what
/// had been recorded.
/// </summary>
/// <param name="Date">The day it was packed.</param>
/// <param name="Standings">The word by position and part, such as "seated", "lead", "disputed", "ruled out".</param>
/// <param name="Recorded">Ids of claims, repairs and questions; those of withdrawn claims are left out.</param>
public sealed record PublishedState(
    DateOnly Date, IReadOnlyDictionary<(string Position, string Part), string> Standings, IReadOnlySet<string> Recorded)
{
    /// <summary>What a library says now.</summary>
    public static PublishedState Of(Library library, DateOnly date)
    {
        var fits = new Fits(library);
        return Of(library, fits.Book.Withdrawals, library.Positions.Keys.Select(p => fits.At(p)), date);
    }

    /// <summary>What a library says now, of answers that are known already.</summary>
    internal static PublishedState Of(Library library, Withdrawals withdrawals, IEnumerable<FitsAnswer> answers, DateOnly date)
    {
        var standings = new Dictionary<(string, string), string>();
        foreach (var answer in answers)
        {
            foreach (var candidate in answer.Candidates) standings[(answer.Position, candidate.Part)] = candidate.Standing;
            foreach (var refusal in answer.Disputed) standings[(answer.Position, refusal.Part)] = StandingWord.Disputed;
            foreach (var refusal in answer.RuledOut) standings[(answer.Position, refusal.Part)] = StandingWord.RuledOut;
        }
        var recorded = library.Claims.Values.Where(c => !c.Retired && withdrawals.Stands(c.Id)).Select(c => c.Id)
            .Concat(library.Repairs.Values.Where(r => !r.Retired).Select(r => r.Id))
            .Concat(library.Questions.Values.Where(q => !q.Retired).Select(q => q.Id));
        return new PublishedState(date, standings, recorded.ToHashSet(StringComparer.Ordinal));
    }
}

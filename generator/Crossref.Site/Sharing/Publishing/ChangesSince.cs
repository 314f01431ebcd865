using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Site.Sharing.Publishing;

/// <summary>What has changed since a stick was last packed.</summary>
/// <param name="Since">The day of that stick.</param>
/// <param name="Recorded">Ids of claims, repairs and questions that are new, in order of id.</param>
/// <param name="New">Parts that stand where nothing was recorded.</param>
/// <param name="Confirmed">Parts that stand more surely.</param>
/// <param name="Contradicted">Parts that stand less surely, are disputed, or are ruled out now.</param>
/// <param name="Withdrawn">Ids of claims that were taken back or retired.</param>
public sealed record ChangesSince(
    DateOnly Since, IReadOnlyList<string> Recorded, IReadOnlyList<StandingChange> New, IReadOnlyList<StandingChange> Confirmed,
    IReadOnlyList<StandingChange> Contradicted, IReadOnlyList<string> Withdrawn)
{
    // From what speaks most against a part to what speaks most for it.
    private static readonly List<string> Order = [StandingWord.RuledOut, StandingWord.Disputed, StandingWord.Nothing, StandingWord.Lead, .. Enum.GetValues<Basis>().Order().Select(Words.Of)];

    /// <summary>Whether nothing has changed.</summary>
    public bool IsEmpty => Recorded.Count + New.Count + Confirmed.Count + Contradicted.Count + Withdrawn.Count == 0;

    /// <summary>Compares two states of one library.</summary>
    public static ChangesSince Between(PublishedState before, PublishedState now)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(now);
        var changes = before.Standings.Keys.Union(now.Standings.Keys)
            .Select(key => new StandingChange(
                key.Position, key.Part, before.Standings.GetValueOrDefault(key, StandingWord.Nothing), now.Standings.GetValueOrDefault(key, StandingWord.Nothing)))
            // A lead that comes or goes proves nothing.
            .Where(c => c.Before != c.Now && !(c.Before is (StandingWord.Nothing or StandingWord.Lead) && c.Now is (StandingWord.Nothing or StandingWord.Lead)))
            .OrderBy(c => c.Position, StringComparer.Ordinal).ThenBy(c => c.Part, StringComparer.Ordinal).ToList();
        var rose = changes.ToLookup(c => Order.IndexOf(c.Now) > Order.IndexOf(c.Before));
        return new ChangesSince(
            before.Date,
            [.. now.Recorded.Except(before.Recorded).Order(StringComparer.Ordinal)],
            [.. rose[true].Where(c => c.Before == StandingWord.Nothing)],
            [.. rose[true].Where(c => c.Before != StandingWord.Nothing)],
            [.. rose[false]],
            [.. before.Recorded.Except(now.Recorded).Order(StringComparer.Ordinal)]);
    }
}

namespace Crossref.Core.Lookup;

/// <summary>An entry that answers a query, before its record is read.</summary>
/// <param name="Entry">Its number in the index.</param>
/// <param name="Score">See <see cref="LookupTier"/>.</param>
/// <param name="Lead">The number match that gave the tier, if one did.</param>
/// <param name="Numbers">All number matches, in the order of the query's terms.</param>
/// <param name="Words">All words that matched, in the order of the query's terms.</param>
internal sealed record Match(
    int Entry, int Score, NumberMatch? Lead, IReadOnlyList<NumberMatch> Numbers, IReadOnlyList<string> Words)
    : IComparable<Match>
{
    /// <summary>Below zero when this one ranks before the other: score, then the number, then the entry.</summary>
    public int CompareTo(Match? other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var order = other.Score.CompareTo(Score);
        order = order != 0 ? order : string.CompareOrdinal(Lead?.Key ?? "", other.Lead?.Key ?? "");
        order = order != 0 ? order : (Lead?.Role ?? 0).CompareTo(other.Lead?.Role ?? 0);
        return order != 0 ? order : Entry.CompareTo(other.Entry);
    }
}

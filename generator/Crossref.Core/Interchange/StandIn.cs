using Crossref.Core.Evidence;

namespace Crossref.Core.Interchange;

/// <summary>One part in place of another, as far as it is said for one family, one position, or anywhere.</summary>
/// <param name="Part">The part that goes in.</param>
/// <param name="InsteadOf">The part it goes in for.</param>
/// <param name="Where">A family id or a position address; null for anywhere.</param>
/// <param name="Fact">What the statements come to, without a machine; <see cref="Fact.Nothing"/> for a supersession.</param>
/// <param name="Word">
/// The relation in the words of MIL-STD-280A, clause 3.2 (wording from memory): "interchangeable" both ways and without
/// condition, "substitute" one way or under a condition, "replacement" where the maker supersedes, else "disputed" or "ruled out".
/// </param>
/// <param name="Reason">Why, in one plain sentence.</param>
public sealed record StandIn(string Part, string InsteadOf, string? Where, Fact Fact, string Word, string Reason)
{
    /// <summary>Whether the one may go in for the other at all.</summary>
    public bool Stands => Fact.State is FactState.Stands or FactState.Nothing;
}

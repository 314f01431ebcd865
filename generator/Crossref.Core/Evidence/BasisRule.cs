using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>What a claim counts for: its basis as written, lowered where it lacks what that basis needs.</summary>
internal sealed class BasisRule(Library library)
{
    internal (Basis Basis, string? Lowered) Effective(Claim claim)
    {
        if (claim.Source is not { } source) return Lower(claim, Basis.Told, "no source is named");
        if (library.Records.GetValueOrDefault(source.Id) is { Retired: true }) return Lower(claim, Basis.Told, "its source is retired");
        return claim.Basis!.Value switch
        {
            Basis.Documented when !library.Documents(source) => Lower(claim, Basis.Told, "its source is not a maker's document or a standard"),
            Basis.Ran when !CountsAsRun(claim.Run) => Lower(claim, Basis.Seated, "the run is too short to count"),
            var basis => (basis, null),
        };
    }

    /// <summary>Whether a run is long enough to say more than that the part was seated.</summary>
    internal bool CountsAsRun(Count? run) => run is { } r && r.Value >= library.Card.Proving.NeededToCount(r.Unit);

    private static (Basis, string?) Lower(Claim claim, Basis to, string why) => (to, claim.Basis == to ? null : why);
}

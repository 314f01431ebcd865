using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>
/// What proves a fact. Proven is never written: one run reaches its share of the part's life, or two runs in two
/// machines or two shops reach what <see cref="Proving"/> asks.
/// </summary>
internal static class ProofRule
{
    /// <summary>The positive statements with those that prove raised to <see cref="Basis.Proven"/>.</summary>
    internal static List<Statement> Raise(Library library, IReadOnlyList<Statement> positives)
    {
        var runs = positives.Where(s => s is { Basis: Basis.Ran, NeighboursDamaged: not true, Run: not null }).ToList();
        bool Proves(Statement s) => runs.Contains(s) &&
            (ReachesShareOfLife(library, s.Part, s.Run) || runs.Any(other => ProveTogether(library.Card.Proving, s, other)));
        return [.. positives.Select(s => Proves(s) ? s with { Basis = Basis.Proven } : s)];
    }

    internal static bool ReachesShareOfLife(Library library, string part, Count? run) =>
        run is { } r && library.Parts.GetValueOrDefault(part)?.Life is { } life && life.Unit == r.Unit &&
        r.Value >= library.Card.Proving.ShareOfLife * life.Value;

    private static bool ProveTogether(Proving proving, Statement a, Statement b) =>
        LongEnough(proving, a) && LongEnough(proving, b) && a.OnlyIf.SameAs(b.OnlyIf) &&
        (a.Shop != b.Shop || (a.Machine is not null && b.Machine is not null && a.Machine != b.Machine));

    private static bool LongEnough(Proving proving, Statement s) => s.Run!.Value.Value >= proving.Needed(s.Run.Value.Unit);
}

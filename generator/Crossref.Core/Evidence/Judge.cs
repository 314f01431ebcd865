using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>Judges a fact: sorts its statements into what they do for one machine, and says what comes of it.</summary>
internal static class Judge
{
    internal static Fact Decide(Library library, IReadOnlyList<Statement> statements, MachineContext machine, bool safety)
    {
        if (statements.Count == 0) return Fact.Nothing;
        List<Statement> positives = [], negatives = [], exceptions = [];
        foreach (var statement in statements)
        {
            var truth = statement.HoldsFor(machine);
            if (truth == Truth.False) continue;
            if (statement.IsPositive) positives.Add(statement);
            else if (truth == Truth.True || safety) negatives.Add(statement);
            else exceptions.Add(statement);
        }
        positives = [.. ProofRule.Raise(library, positives)
            .OrderByDescending(s => s.Basis)
            .ThenBy(s => s.Change is not null)
            .ThenBy(s => Unknown(s, machine).Count())
            .ThenBy(s => s.Kind != StatementKind.Listing)
            .ThenByDescending(s => s.Date)
            .ThenBy(s => s.Id, StringComparer.Ordinal)];
        negatives = [.. negatives.OrderByDescending(s => s.Basis).ThenByDescending(s => s.Date).ThenBy(s => s.Id, StringComparer.Ordinal)];
        return new Fact
        {
            State = State(positives.FirstOrDefault()?.Basis, negatives.FirstOrDefault()?.Basis, safety),
            Leading = positives.FirstOrDefault(),
            Positives = positives,
            Negatives = negatives,
            Exceptions = exceptions,
            CheckFirst = positives.Count > 0 ? [.. Unknown(positives[0], machine)] : [],
            Safety = safety,
        };
    }

    private static FactState State(Basis? yes, Basis? no, bool safety) => (yes, no) switch
    {
        (null, null) => FactState.Nothing,
        (_, null) => FactState.Stands,
        (null, _) => FactState.RuledOut,
        _ when safety || no > yes => FactState.RuledOut,
        _ when no == yes => FactState.Disputed,
        _ => FactState.Stands,
    };

    private static IEnumerable<Term> Unknown(Statement statement, MachineContext machine) =>
        statement.Terms.Where(t => t.HoldsFor(machine) == Truth.Unknown);
}

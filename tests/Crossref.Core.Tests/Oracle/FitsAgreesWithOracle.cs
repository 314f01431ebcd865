using Crossref.Core.Interchange;

namespace Crossref.Core.Tests.Oracle;

/// <summary>The production answer is the naive one, for every question to thousands of random libraries.</summary>
public sealed class FitsAgreesWithOracle
{
    /// <summary>How many libraries: within as many, every rule turned round is seen.</summary>
    internal const int Libraries = 4000;

    // Another run of seeds: ORACLE_FROM and ORACLE_LIBRARIES.
    [Fact]
    public void Every_answer_is_the_naive_one()
    {
        var (from, many) = (Number("ORACLE_FROM", 1), Number("ORACLE_LIBRARIES", Libraries));
        for (var seed = from; seed < from + many; seed++)
        {
            var draft = RandomLibraries.Of(seed);
            if (Disagreement(draft) is null) continue;
            var small = Shrinking.Shrink(draft, d => Disagreement(d) is not null);
            Assert.Fail($"Seed {seed}, shrunk:\n{LibraryText.Of(small)}\n{Disagreement(small)}");
        }
    }

    // The first question that the two answer differently; null when there is none.
    private static string? Disagreement(Draft draft)
    {
        var library = draft.Freeze();
        var (naive, fits) = (new NaiveFits(library), new Fits(library));
        foreach (var (position, machine) in draft.Questions())
        {
            var expected = naive.At(position, machine).ToString();
            var actual = Said(fits.At(position, machine)).ToString();
            if (expected != actual)
                return $"{position}, {machine ?? "no machine"}\n--- by the text\n{expected}\n--- by the code\n{actual}";
        }
        return null;
    }

    private static NaiveAnswer Said(FitsAnswer answer) => new(
        [.. answer.Candidates.Select(c => new NaiveCandidate(
            c.Part, c.Standing, c.Weakest, c.Accepted,
            [.. c.Steps.Select(s => new NaiveStep(s.Kind, s.From, s.To, s.Standing, s.Via))],
            [.. c.Conditions.ToHashSet().Order(StringComparer.Ordinal)], c.Changes))],
        [.. answer.Disputed.Select(r => r.Part)], [.. answer.RuledOut.Select(r => r.Part)]);

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), out var number) ? number : otherwise;
}

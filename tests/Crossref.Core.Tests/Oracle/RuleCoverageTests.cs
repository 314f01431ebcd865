using Xunit.Abstractions;

namespace Crossref.Core.Tests.Oracle;

/// <summary>
/// The random libraries are crowded enough: for every single rule there are some in which believing the opposite gives
/// another answer, so that production code with one rule wrong cannot agree with the naive one throughout.
/// </summary>
public sealed class RuleCoverageTests(ITestOutputHelper output)
{
    /// <summary>How many libraries have to answer a question differently before a rule is let go.</summary>
    private const int Wanted = 2;

    [Fact]
    public void Every_single_rule_is_seen_when_it_is_turned_round()
    {
        var (counted, most) = (Number("ORACLE_COUNT", 16), FitsAgreesWithOracle.Libraries);
        var mutations = Enum.GetValues<Mutation>();
        var seen = new int[mutations.Length];
        var tried = new int[mutations.Length];
        for (var seed = 1; seed <= most; seed++)
        {
            var open = Enumerable.Range(0, mutations.Length).Where(i => seed <= counted || seen[i] < Wanted).ToList();
            if (open.Count == 0) break;
            var draft = RandomLibraries.Of(seed);
            var library = draft.Freeze();
            var right = Answers(draft, new NaiveFits(library)).ToList();
            foreach (var i in open)
            {
                tried[i]++;
                if (!right.SequenceEqual(Answers(draft, new NaiveFits(library, mutations[i])))) seen[i]++;
            }
        }
        for (var i = 0; i < mutations.Length; i++) output.WriteLine($"{mutations[i],-40} {seen[i],6} of {tried[i]} libraries");
        Assert.DoesNotContain(0, seen);
    }

    private static IEnumerable<string> Answers(Draft draft, NaiveFits fits) =>
        draft.Questions().Select(q => fits.At(q.Position, q.Machine).ToString());

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), out var number) ? number : otherwise;
}

using Crossref.Core.Evidence;
using Crossref.Core.Records;
using static Crossref.Core.Tests.Evidence.SplitShop;

namespace Crossref.Core.Tests.Evidence;

/// <summary>What is found between random statements is what the definition says, no more and no less.</summary>
public class SplitPropertyTests
{
    private const int Rounds = 40_000;

    private static readonly string[] Kinds = ["model", "serial: yes first", "serial: no first", "mains", "family", "machine", "date: yes first", "date: no first"];

    private readonly Random _random = new(20260211);

    [Fact]
    public void Splits_are_those_of_the_definition()
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal) { ["nothing"] = 0 };
        foreach (var kind in Kinds) seen[kind] = 0;
        for (var round = 0; round < Rounds; round++)
        {
            var library = With(Enumerable.Range(1, 4).Select(i => Machine("m" + i, Pick("first", "second"), Pick("F", "F", "G", null), Pick("9", "10", "A9", "a10", "B-7", null), Pick<decimal?>(120, 230, null))));
            // A few things are left out of a whole round, or nearly every round would be split by one of them.
            var kept = _random.Next(64);
            var (yes, no) = (Some(kept), Some(kept));
            var expected = new NaiveSplits(library).Find(yes, no);
            var found = new SplitFinder(library).Find(yes, no);
            Assert.Equal(expected, found.Select(Kind));
            foreach (var kind in expected.DefaultIfEmpty("nothing")) seen[kind]++;
        }
        Assert.All(seen, s => Assert.True(s.Value >= 100, $"{s.Key} came up {s.Value} times only"));
    }

    private static string Kind(string found)
    {
        var word = found.Split(' ')[0];
        return word is not ("serial" or "date") ? word : $"{word}: {(found.StartsWith(word + " (yes", StringComparison.Ordinal) ? "yes" : "no")} first";
    }

    private List<Statement> Some(int kept) => [.. Enumerable.Range(0, Pick(0, 1, 1, 2, 2, 3)).Select(_ => One(kept))];

    private Statement One(int kept)
    {
        var condition = new Condition
        {
            Models = (kept & 1) > 0 && _random.Next(3) == 0 ? Pick<string[]>(["F"], ["G"], ["F", "G"]) : [],
            Mains = (kept & 2) > 0 && _random.Next(3) == 0 ? Pick(120, 230) : null,
        };
        if ((kept & 4) > 0 && _random.Next(2) == 0)
        {
            var (from, to) = Pick<(string?, string?)>(("9", "10"), ("11", null), (null, "8"), ("A9", "A9"), ("a11", null), ("B-7", null));
            condition = condition with { SerialFrom = from, SerialTo = to };
        }
        return new Statement
        {
            Kind = StatementKind.Claim, Id = "c", Part = "part-a", Verdict = Verdict.Fits, Basis = Basis.Seated, Shop = "shop", OnlyIf = condition,
            Machine = (kept & 8) > 0 ? Pick("m1", "m2", "m3", "m4", "m4", "not-on-record", null) : null,
            Where = (kept & 16) > 0 ? Pick("first", "second", Here, null) : null,
            Date = (kept & 32) > 0 ? Pick(new PartialDate(2025, 0, 0), new(2025, 12, 0), new(2025, 12, 31), new(2026, 0, 0), new(2026, 1, 0), new(2026, 1, 2), default) : default,
        };
    }

    private T Pick<T>(params T[] from) => from[_random.Next(from.Length)];
}

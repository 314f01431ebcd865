using Crossref.Core.Interchange;
using Crossref.Core.Records;
using QuikGraph;
using QuikGraph.Algorithms;

namespace Crossref.Core.Tests.Oracle;

/// <summary>
/// Where nothing but positive substitutions is claimed, a path of evidence is a path in a graph: what can be reached
/// within four steps, and the widest of the paths that are short enough. A graph library finds both in its own way:
/// with all claims weaker than some rank left out, the shortest path to a part tells whether that rank can be had.
/// </summary>
public sealed class PathsAgreeWithGraphLibrary
{
    private static readonly Place Nowhere = new("random.yaml", 1, 1);

    // One first step and one substitution at most: an answer. One first step and three: the limit.
    private const int Answer = 2, Limit = 4;

    [Fact]
    public void Candidates_are_what_the_graph_reaches_and_stand_as_its_widest_path()
    {
        var leads = 0;
        for (var seed = 1; seed <= 1500; seed++)
        {
            var random = new Random(seed);
            var claims = Claims(random, random.Next(4, 10)).ToList();
            var library = Freeze(claims);
            var expected = Widest(claims);
            var actual = new Fits(library).At("family/unit/place", null).Candidates;
            var naive = new NaiveFits(library).At("family/unit/place", null).Candidates;
            Assert.Equal(expected, [.. actual.Select(c => (c.Part, c.IsLead, c.Weakest, c.Steps.Count)).Order()]);
            Assert.Equal(expected, [.. naive.Select(c => (c.Part, c.Standing == "lead", c.Weakest, c.Steps.Count)).Order()]);
            leads += expected.Count(e => e.IsLead);
        }
        Assert.True(leads > 500, "too few long paths to mean anything");
    }

    private static List<(string Part, bool IsLead, Basis Weakest, int Steps)> Widest(List<Claim> claims)
    {
        var found = new Dictionary<string, (string Part, bool IsLead, Basis Weakest, int Steps)>();
        foreach (var limit in new[] { Answer, Limit })
            foreach (var least in Enum.GetValues<Basis>().OrderDescending())
            {
                var graph = claims.Where(c => c.Basis >= least)
                    .Select(c => new Edge<string>(c.Replaces?.Id ?? "", c.Part.Id)).ToBidirectionalGraph<string, Edge<string>>();
                if (!graph.ContainsVertex("")) continue;
                var paths = graph.TreeBreadthFirstSearch("");
                foreach (var part in graph.Vertices.Where(v => v.Length > 0))
                    if (paths(part, out var path) && path.Count() is var steps && steps <= limit)
                        found.TryAdd(part, (part, limit > Answer, least, steps));
            }
        return [.. found.Values.Order()];
    }

    private static IEnumerable<Claim> Claims(Random random, int parts)
    {
        Basis[] bases = [Basis.Documented, Basis.Seated, Basis.Moulded, Basis.Measured, Basis.Offered, Basis.Told];
        string Part() => "part-" + random.Next(1, parts + 1);
        for (var i = random.Next(4, 2 * parts + 2); i > 0; i--)
        {
            var (part, other) = (Part(), Part());
            var here = i == 1 || part == other || random.Next(6) == 0;
            yield return new Claim
            {
                Id = "claim-" + i, Place = Nowhere, Part = new Ref(part, Nowhere), At = here ? new Ref("family/unit/place", Nowhere) : null,
                Replaces = here ? null : new Ref(other, Nowhere), Verdict = Verdict.Fits, Basis = bases[random.Next(bases.Length)],
                Source = new Ref("manual", Nowhere),
            };
        }
    }

    private static Library Freeze(IEnumerable<Claim> claims)
    {
        var bearing = PartKind.Find("bearing")!;
        var place = new Position { Id = "place", Family = "family", Assembly = "unit", Place = Nowhere, Name = "Place", Kind = bearing };
        var unit = new Assembly { Id = "unit", Family = "family", Name = "Unit", Place = Nowhere, Positions = [place] };
        return new Library(
            new LibraryRecord { Id = "the-shop", Place = Nowhere, Title = "The shop" },
            [
                new Source { Id = "manual", Place = Nowhere, Kind = SourceType.Manual, Title = "Manual" },
                new Family { Id = "family", Place = Nowhere, Name = "Family", Maker = "Ostrin", Assemblies = [unit] },
                .. Enumerable.Range(1, 9).Select(i => new Part { Id = "part-" + i, Place = Nowhere, Kind = bearing, Name = "Part" }),
                .. claims,
            ]);
    }
}

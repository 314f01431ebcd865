using CsCheck;
using QuikGraph;
using QuikGraph.Algorithms;

namespace Crossref.Core.Tests.Checking;

public class CyclesTests
{
    [Fact]
    public void Circles_are_found_exactly_where_a_graph_is_not_acyclic() =>
        Gen.Select(Gen.Int[0, 7], Gen.Int[0, 7]).Array[0, 14].Sample(pairs =>
        {
            var graph = new AdjacencyGraph<string, Edge<string>>();
            graph.AddVertexRange(Enumerable.Range(0, 8).Select(Name));
            graph.AddEdgeRange(pairs.Distinct().Select(p => new Edge<string>(Name(p.Item1), Name(p.Item2))));
            var circles = Core.Checking.Rules.Cycles.Find(graph.Vertices, id => graph.OutEdges(id).Select(e => e.Target)).ToList();
            foreach (var circle in circles)
            {
                Assert.Equal(circle.Min(StringComparer.Ordinal), circle[0]);
                for (var i = 0; i < circle.Count; i++) Assert.True(graph.ContainsEdge(circle[i], circle[(i + 1) % circle.Count]));
            }
            Assert.Equal(circles.Select(c => string.Join(' ', c)).Distinct().Count(), circles.Count);
            Assert.Equal(!graph.IsDirectedAcyclicGraph(), circles.Count > 0);
        });

    [Fact]
    public void Long_chains_are_followed() =>
        Assert.Empty(Core.Checking.Rules.Cycles.Find(["0"], id => id == "200000" ? [] : [Name(int.Parse(id, System.Globalization.CultureInfo.InvariantCulture) + 1)]));

    private static string Name(int i) => i.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

using CsCheck;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Rolling;

namespace Crossref.Core.Tests.Arithmetic.Rolling;

public class RepeatTests
{
    private static readonly Calculator Calculator = Calculators.All.Single(c => c.Name == "repeat");

    // Workshop practice: repeat ÷ 3.14 is the diameter; marks every 94 mm come from something 30 mm across.
    [Theory]
    [InlineData(30, 94)]
    [InlineData(40, 126)]
    [InlineData(45, 141)]
    [InlineData(24, 75)]
    [InlineData(12, 38)]
    public void Diameter_and_repeat_go_by_pi(double diameter, double repeat)
    {
        Assert.Equal(repeat, Repeat.Around(diameter).Middle, 0);
        Assert.True(Repeat.Within(repeat, Repeat.Tolerance).Holds(Repeat.Around(diameter)));
    }

    [Fact]
    public void A_diameter_comes_back_from_its_repeat() =>
        Gen.Double[1, 500].Sample(diameter => Assert.Equal(diameter, Repeat.Diameter(Repeat.Around(diameter)).Middle, tolerance: 1e-9));

    [Fact]
    public void Several_repeats_over_several_sheets_come_to_one() =>
        Gen.Select(Gen.Double[10, 300], Gen.Int[1, 20], Gen.Double[0, 100], Gen.Int[0, 5]).Sample((repeat, repeats, gap, gaps) =>
            Assert.Equal(repeat, Repeat.One(repeat * repeats - gap * gaps, repeats, gap, gaps).Middle, tolerance: 1e-9));

    [Fact]
    public void A_sleeve_that_outruns_the_paper_is_farther_around_than_the_repeat() => Assert.Equal(94 * 1.5, Repeat.Around(94, 1.5).Middle, 9);

    [Fact]
    public void More_doubt_or_tolerance_never_makes_fewer_suspects() =>
        Gen.Select(Places, Gen.Double[20, 400], Gen.Double[0, 5], Gen.Double[0, 5], Gen.Double[0, 3], Gen.Double[0, 3]).Sample((places, around, doubt, moreDoubt, percent, morePercent) =>
        {
            var sure = RepeatMatch.Of(places, Interval.Around(around, doubt), percent).Where(m => m.Suspect).Select(m => m.Place.Position);
            var doubtful = RepeatMatch.Of(places, Interval.Around(around, doubt + moreDoubt), percent + morePercent).Where(m => m.Suspect).Select(m => m.Place.Position);
            Assert.Subset(doubtful.ToHashSet(), sure.ToHashSet());
        });

    // Written apart from the production code: picks the best one left, again and again.
    [Fact]
    public void Places_come_as_a_slow_search_picks_them() =>
        Gen.Select(Places, Gen.Int[20, 400], Gen.Int[0, 10]).Sample((places, around, percent) =>
        {
            var left = places.ToList();
            foreach (var match in RepeatMatch.Of(places, around, percent))
            {
                bool Suspect(TurningPlace p) => p.Around.High >= around - around * percent / 100.0 - 1e-9 && p.Around.Low <= around + around * percent / 100.0 + 1e-9;
                double Off(TurningPlace p) => Math.Abs(100 * ((p.Around.Low + p.Around.High) / 2 - around) / around);
                var best = left[0];
                foreach (var place in left)
                {
                    var nearer = Off(place) < Off(best) - 1e-9 || Math.Abs(Off(place) - Off(best)) < 1e-9 && string.CompareOrdinal(place.Position, best.Position) < 0;
                    if (Suspect(place) == Suspect(best) ? nearer : Suspect(place)) best = place;
                }
                Assert.Equal((best.Position, Suspect(best)), (match.Place.Position, match.Suspect));
                Assert.Equal(Off(best), Math.Abs(match.Misfit), tolerance: 1e-6);
                left.Remove(best);
            }
            Assert.Empty(left);
        });

    [Fact]
    public void A_machine_is_searched_through_its_family()
    {
        var record = new OnRecord([Place("a/x/one", 94), Place("b/x/two", 95), Place("a/x/three", 120)])
        {
            Machines = [new("a", "As", "a"), new("b", "Bs", "b"), new("press-1", "Old one", "a")],
        };
        Assert.Equal(["a/x/one", "a/x/three"], Named(record, "press-1"));
        Assert.Equal(["b/x/two"], Named(record, "b"));
        Assert.Equal(["a/x/one", "b/x/two", "a/x/three"], Named(record, ""));
        var problem = Assert.Single(Run(record, "pres-1").Problems);
        Assert.Equal(("machine", "there is no machine or family 'pres-1' on record; did you mean 'press-1'?"), (problem.Input, problem.Message));
    }

    private static Gen<TurningPlace[]> Places => Gen.Select(Gen.Int[20, 400], Gen.Int[0, 8]).Array[0, 12].Select(sizes =>
        sizes.Select((s, i) => Place($"f/a/p{(i * 7) % 13}-{i}", s.Item1, s.Item2)).ToArray());

    private static TurningPlace Place(string position, double around, double doubt = 0) =>
        new(position, "Name of " + position, position.Split('/')[0], Interval.Around(around, doubt), "on record");

    private static IEnumerable<string> Named(OnRecord record, string machine) => Run(record, machine).Working!.Lines
        .Where(l => l.What.StartsWith("Name of ", StringComparison.Ordinal)).Select(l => l.What["Name of ".Length..]);

    private static CalculatorResult Run(OnRecord record, string machine) =>
        Calculator.Run(new Dictionary<string, string> { ["distance"] = "94", ["machine"] = machine }, record);
}

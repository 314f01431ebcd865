using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Gears;
using Crossref.Core.Sizes;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Gears;

public class GearComparisonTests
{
    private static readonly GearSizes Left = new()
    {
        Teeth = 34, Module = 1, PressureAngle = 20, Helix = 15, Hand = Hand.Left, Face = 10, Bore = 25,
    };

    // Few different values, so that gears often agree.
    private static readonly Gen<GearSizes> Gear = Gen.Select(
        Gen.Select(Known(0.8, 0.79375, 1), Known(20, 14.5), Known(0, 15)),
        OneOf<Hand?>(null, Hand.None, Hand.Left, Hand.Right),
        OneOf<int?>(null, 32, 34),
        Gen.Select(Known(9, 10), Known(10, 10.02)),
        (teeth, hand, count, mounting) => new GearSizes
        {
            Module = teeth.Item1, PressureAngle = teeth.Item2, Helix = teeth.Item3, Hand = hand, Teeth = count, Face = mounting.Item1, Bore = mounting.Item2,
        });

    [Fact]
    public void Meshing_wants_the_other_hand_and_replacing_the_same()
    {
        var right = Left with { Hand = Hand.Right, Teeth = 20, Face = 8, Bore = 12 };
        Assert.Equal(Agreement.Agrees, GearComparison.Overall(GearComparison.Mesh(Left, right)));
        Assert.Equal(Agreement.Differs, GearComparison.Overall(GearComparison.Mesh(Left, Left)));
        Assert.Equal(Agreement.Agrees, GearComparison.Overall(GearComparison.Replace(Left, Left)));
        Assert.Equal(["hand", "teeth", "face", "bore"], GearComparison.Replace(Left, right).Where(s => s.Agreement == Agreement.Differs).Select(s => s.Name));
    }

    [Fact]
    public void A_straight_gear_meshes_with_a_straight_one_only()
    {
        var straight = Left with { Helix = 0, Hand = Hand.None };
        Assert.Equal(Agreement.Agrees, GearComparison.Overall(GearComparison.Mesh(straight, straight)));
        Assert.Equal(Agreement.Differs, GearComparison.Overall(GearComparison.Mesh(straight, Left)));
    }

    [Theory]
    [InlineData(0.8, 0.79375)] // 32 DP
    [InlineData(1, 1.016)] // 25 DP
    [InlineData(1.25, 1.27)] // 20 DP
    public void Near_twins_do_not_mesh(double module, double twin) =>
        Assert.Equal(Agreement.Differs, GearComparison.Mesh(Left with { Module = module }, Left with { Module = twin, Hand = Hand.Right })[0].Agreement);

    [Fact]
    public void A_module_measured_too_loosely_is_unknown() =>
        Assert.Equal(Agreement.Unknown, GearComparison.Mesh(Left with { Module = 0.8 }, Left with { Module = Interval.Around(0.797, 0.004) })[0].Agreement);

    [Fact]
    public void Both_questions_come_out_the_same_when_the_gears_change_places() => Gen.Select(Gear, Gear).Sample((a, b) =>
    {
        Assert.Equal(GearComparison.Mesh(a, b), GearComparison.Mesh(b, a));
        Assert.Equal(GearComparison.Replace(a, b), GearComparison.Replace(b, a));
    });

    [Fact]
    public void What_is_unknown_never_agrees() => Gen.Select(Gear, Gear).Sample((a, b) =>
    {
        var all = GearComparison.Replace(a, b);
        Assert.Equal(a.Module is null || b.Module is null, all.Single(s => s.Name == "module").Rule == "both must be known");
        Assert.All(all.Where(s => s.Rule == "both must be known"), s => Assert.Equal(Agreement.Unknown, s.Agreement));
        if (HasUnknown(a) || HasUnknown(b)) Assert.NotEqual(Agreement.Agrees, GearComparison.Overall(all));
    });

    [Fact]
    public void More_doubt_turns_an_answer_into_unknown_and_nothing_else() =>
        Gen.Select(Gen.Double[9, 11], Gen.Double[0, 0.3], Gen.Double[9, 11], Gen.Double[0, 0.3], Gen.Double[0, 0.3]).Sample((a, doubt, b, other, more) =>
        {
            var before = GearComparison.Compare(Interval.Around(a, doubt), Interval.Around(b, other), 0.2);
            var after = GearComparison.Compare(Interval.Around(a, doubt + more), Interval.Around(b, other), 0.2);
            return after == before || after == Agreement.Unknown;
        });

    private static bool HasUnknown(GearSizes g) =>
        g.Module is null || g.PressureAngle is null || g.Helix is null || g.Hand is null || g.Teeth is null || g.Face is null || g.Bore is null;

    private static Gen<Interval?> Known(params double[] values) =>
        OneOf([null, .. values.Select(v => (Interval?)Interval.Exactly(v)), Interval.Around(values[0], values[0] / 100)]);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}

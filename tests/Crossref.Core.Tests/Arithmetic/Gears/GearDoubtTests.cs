using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Gears;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Gears;

/// <summary>Doubt is carried through every formula: a wider input never gives a narrower figure, nor one that misses the true value.</summary>
public class GearDoubtTests
{
    // Module, pressure angle, helix angle and another length, each with its doubt.
    private static readonly Dictionary<string, Func<Interval, Interval, Interval, Interval, Interval>> Formulas = new()
    {
        ["transverse module"] = (m, _, h, _) => GearAngles.TransverseModule(m, h),
        ["transverse angle"] = (_, a, h, _) => GearAngles.TransversePressureAngle(a, h),
        ["normal angle"] = (_, a, h, _) => GearAngles.NormalPressureAngle(a, h),
        ["base helix"] = (_, a, h, _) => GearAngles.BaseHelix(a, h),
        ["reference diameter"] = (m, _, h, _) => GearDiameters.Reference(30, m, h),
        ["base diameter"] = (m, a, h, _) => GearDiameters.Base(30, m, a, h),
        ["tip diameter"] = (m, _, h, _) => GearDiameters.Tip(30, m, h, 0.2, -0.05),
        ["root diameter"] = (m, _, h, _) => GearDiameters.Root(30, m, h, 0.2),
        ["module by the tip"] = (_, _, h, l) => GearDiameters.ModuleByTip(30, l, h),
        ["module by tip and root"] = (m, _, _, l) => GearDiameters.ModuleByDepth(l, m),
        ["module by the distance"] = (_, _, h, l) => CentreDistance.ModuleByDistance(l, 50, h),
        ["reference distance"] = (m, _, h, _) => CentreDistance.Reference(50, m, h),
        ["working angle"] = (m, a, h, _) => CentreDistance.WorkingAngle(CentreDistance.Reference(50, m, h), GearAngles.TransversePressureAngle(a, h), 400)!.Value,
        ["both shifts"] = (_, a, h, _) => CentreDistance.BothShifts(a, GearAngles.TransversePressureAngle(a, h), 35, 50),
        ["span"] = (m, a, h, _) => BaseTangent.Length(30, 4, m, a, h, 0.2),
        ["base pitch"] = (m, a, _, _) => BaseTangent.Pitch(m, a),
        ["module by the pitch"] = (_, a, _, l) => BaseTangent.ModuleByPitch(l, a),
        ["shift by the span"] = (m, a, h, l) => BaseTangent.Shift(l, 30, 4, m, a, h),
        ["narrowest face"] = (_, a, h, l) => BaseTangent.NarrowestFace(l, a, h),
    };

    public static IEnumerable<object[]> Names() => Formulas.Keys.Select(n => new object[] { n });

    [Theory]
    [MemberData(nameof(Names))]
    public void A_wider_input_never_gives_a_narrower_figure(string name) =>
        Gen.Select(Doubtful(0.5, 5), Doubtful(14, 25), Doubtful(0.5, 30), Doubtful(20, 90)).Sample((m, a, h, l) =>
        {
            var formula = Formulas[name];
            var narrow = formula(m.Narrow, a.Narrow, h.Narrow, l.Narrow);
            Assert.True(formula(m.Wide, a.Wide, h.Wide, l.Wide).Holds(narrow));
            Assert.True(new Interval(narrow.Low - 1e-9, narrow.High + 1e-9).Holds(formula(m.True, a.True, h.True, l.True)));
        });

    [Fact]
    public void From_module_to_tip_and_back() =>
        Gen.Select(Gen.Int[5, 200], Gen.Double[0.2, 10], Gen.Double[0, 40]).Sample((z, m, h) =>
            Math.Abs(GearDiameters.ModuleByTip(z, GearDiameters.Tip(z, m, h), h).Middle - m) < 1e-12 * z);

    [Fact]
    public void Tip_and_root_give_the_module_whatever_the_shift() =>
        Gen.Select(Gen.Int[5, 200], Gen.Double[0.2, 10], Gen.Double[-0.5, 1]).Sample((z, m, x) =>
            Math.Abs(GearDiameters.ModuleByDepth(GearDiameters.Tip(z, m, 0, x), GearDiameters.Root(z, m, 0, x)).Middle - m) < 1e-12 * z);

    [Fact]
    public void The_working_angle_comes_out_alike_by_the_distance_and_by_the_shifts() =>
        Gen.Select(Gen.Int[20, 150], Gen.Double[0.3, 5], Gen.Double[0, 30], Gen.Double[-0.2, 1.2]).Sample((both, m, h, shifts) =>
        {
            var (transverse, reference) = (GearAngles.TransversePressureAngle(20, h), CentreDistance.Reference(both, m, h));
            var byShifts = CentreDistance.WorkingAngle(20, transverse.Middle, shifts, both);
            var distance = CentreDistance.Working(reference, transverse, byShifts);
            Assert.Equal(byShifts, CentreDistance.WorkingAngle(reference, transverse, distance)!.Value.Middle, 1e-6);
            Assert.Equal(shifts, CentreDistance.BothShifts(20, transverse, byShifts, both).Middle, 1e-6);
        });

    [Fact]
    public void Base_circles_too_large_for_a_distance_have_no_working_angle()
    {
        Assert.Null(CentreDistance.WorkingAngle(54, 20, 50));
        Assert.NotNull(CentreDistance.WorkingAngle(54, 20, 51));
        Assert.Null(CentreDistance.WorkingAngle(54, 20, Interval.Around(51, 0.5)));
    }

    // A true value, and two intervals that hold it, one inside the other.
    private static Gen<(double True, Interval Narrow, Interval Wide)> Doubtful(double low, double high) =>
        Gen.Select(Gen.Double[low, high], Gen.Double[0, low / 10], Gen.Double[0, low / 10], Gen.Double[0, low / 10]).Select((value, below, above, more) =>
            (value, new Interval(value - below, value + above), new Interval(value - below - more, value + above + more)));
}

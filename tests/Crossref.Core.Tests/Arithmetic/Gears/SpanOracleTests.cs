using Crossref.Core.Arithmetic.Gears;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Gears;

/// <summary>Spans measured on a gear that is drawn point by point, against the formula.</summary>
public class SpanOracleTests
{
    private static readonly Gen<(int Teeth, double Module, double Angle, double Helix, double Shift)> Gear =
        Gen.Select(Gen.Int[10, 90], Gen.Double[0.3, 5], Gen.Double[14, 25], Gen.OneOf(Gen.Const(0.0), Gen.Double[5, 30]), Gen.Double[-0.3, 0.6]);

    [Fact]
    public void The_formula_measures_what_the_jaws_measure() => Gear.Sample(g =>
    {
        var spanned = (int)Math.Max(2, BaseTangent.TeethToSpan(g.Teeth, g.Angle, g.Helix, g.Shift));
        var drawn = Jaws(g.Teeth, spanned, g.Module, g.Angle, g.Helix, g.Shift);
        Assert.Equal(drawn, BaseTangent.Length(g.Teeth, spanned, g.Module, g.Angle, g.Helix, g.Shift).Middle, 1e-5 * g.Module * g.Teeth);
    }, iter: 200);

    [Fact]
    public void One_tooth_more_adds_the_base_pitch_whatever_the_shift() => Gear.Sample(g =>
    {
        var difference = Jaws(g.Teeth, 4, g.Module, g.Angle, g.Helix, g.Shift) - Jaws(g.Teeth, 3, g.Module, g.Angle, g.Helix, g.Shift);
        var module = BaseTangent.ModuleByPitch(difference, g.Angle).Middle;
        Assert.Equal(g.Module, module, 1e-3 * g.Module);
    }, iter: 100);

    [Fact]
    public void The_shift_is_found_again_from_a_span() => Gear.Sample(g =>
    {
        var span = BaseTangent.Length(g.Teeth, 3, g.Module, g.Angle, g.Helix, g.Shift);
        return Math.Abs(BaseTangent.Shift(span, g.Teeth, 3, g.Module, g.Angle, g.Helix).Middle - g.Shift) < 1e-9;
    });

    [Fact]
    public void The_two_best_spans_touch_on_either_side_of_half_way_up() => Gear.Where(g => g.Helix == 0 && BaseTangent.TeethToSpan(g.Teeth, g.Angle, 0, g.Shift) >= 1).Sample(g =>
    {
        var spanned = (int)BaseTangent.TeethToSpan(g.Teeth, g.Angle, 0, g.Shift);
        var halfWay = g.Module * (g.Teeth + 2 * g.Shift);
        Assert.InRange(halfWay, Touched(spanned) - 1e-9, Touched(spanned + 1) + 1e-9);

        double Touched(int k)
        {
            var (around, span) = (g.Module * g.Teeth * Math.Cos(g.Angle * Math.PI / 180), BaseTangent.Length(g.Teeth, k, g.Module, g.Angle, 0, g.Shift).Middle);
            return Math.Sqrt(around * around + span * span);
        }
    });

    // The outer flank of the outermost tooth, point by point, in the section across the shaft. The teeth stand symmetrically
    // about the upright axis, so that the jaws are twice as far apart as the flank reaches out.
    private static double Jaws(int teeth, int spanned, double module, double angle, double helix, double shift)
    {
        var (alpha, beta) = (angle * Math.PI / 180, helix * Math.PI / 180);
        var transverse = Math.Atan(Math.Tan(alpha) / Math.Cos(beta));
        var radius = module / Math.Cos(beta) * teeth / 2;
        var thickness = module * (Math.PI / 2 + 2 * shift * Math.Tan(alpha)) / Math.Cos(beta);
        var baseRadius = radius * Math.Cos(transverse);
        var halfTooth = thickness / (2 * radius) + Math.Tan(transverse) - transverse;
        var reach = 0.0;
        for (var rolled = 0.0; rolled < 1.2; rolled += 2e-4)
        {
            var at = (spanned - 1) * Math.PI / teeth + halfTooth - (rolled - Math.Atan(rolled));
            reach = Math.Max(reach, baseRadius * Math.Sqrt(1 + rolled * rolled) * Math.Sin(at));
        }
        // On a helical gear the jaws lie along the teeth, which lean by the base helix angle.
        return 2 * reach * Math.Cos(Math.Atan(Math.Tan(beta) * Math.Cos(transverse)));
    }
}

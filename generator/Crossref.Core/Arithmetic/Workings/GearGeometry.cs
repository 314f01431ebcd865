using Crossref.Core.Arithmetic.Gears;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>The sizes that follow from a gear's teeth and module. What needs a pressure angle that is not known is given for a usual one and says so.</summary>
internal static class GearGeometry
{
    /// <summary>How many teeth the shorter of two spans goes over, so that both touch well on the flanks.</summary>
    internal static int TeethToSpan(int teeth, Interval pressureAngle, Interval helix) =>
        Math.Max(1, (int)Math.Floor(BaseTangent.TeethToSpan(teeth, pressureAngle.Middle, helix.Middle) + 1e-9));

    internal static IEnumerable<WorkingLine> Lines(GearSizes gear, double usualAngle, MeasuredGear seen)
    {
        if (gear.Module is not { } module) yield break;
        var (teeth, helix) = (gear.Teeth!.Value, gear.Helix ?? 0.0);
        var angle = gear.PressureAngle ?? usualAngle;
        var transverse = GearAngles.TransversePressureAngle(angle, helix);
        var at = gear.PressureAngle is null ? $" at {Figure.Of(usualAngle, 2, "°")}" : "";
        if (at.Length > 0) yield return new WorkingLine("pressure angle", "unknown", $"lines{at} hold for that angle; 20° is usual (ISO 53), old inch gears have 14.5°");
        if (helix.High > 0) yield return Size("transverse module", GearAngles.TransverseModule(module, helix), "m_t = m / cos β, ISO 21771", 4);
        yield return Size("reference diameter", GearDiameters.Reference(teeth, module, helix), "d = z m / cos β, ISO 21771");
        if (seen.Tip is null) yield return Size("tip diameter", GearDiameters.Tip(teeth, module, helix), "d_a = d + 2 m, ISO 53 profile A, no profile shift");
        if (seen.Root is null) yield return Size("root diameter", GearDiameters.Root(teeth, module, helix), "d_f = d - 2.5 m, ISO 53 profile A, no profile shift");
        yield return Size("base diameter" + at, GearDiameters.Base(teeth, module, angle, helix), "d_b = d cos α_t, ISO 21771");
        var spanned = TeethToSpan(teeth, angle, helix);
        for (var k = spanned; k <= spanned + 1; k++)
            yield return Size($"span over {k} {(k == 1 ? "tooth" : "teeth")}{at}", BaseTangent.Length(teeth, k, module, angle, helix), "W_k = m cos α (π (k - 0.5) + z inv α_t), ISO 21771, no profile shift", 4);
        if (helix.High > 0)
            yield return Size("face needed for both spans" + at, BaseTangent.NarrowestFace(BaseTangent.Length(teeth, spanned + 1, module, angle, helix), angle, helix), "W_k sin β_b, ISO 21771; on a narrower face a jaw slips off");
        if (seen.Span is { } span && seen.SpanTeeth is { } over)
            yield return Size("profile shift" + at, BaseTangent.Shift(span, teeth, over, module, angle, helix), "x from W_k, in modules; teeth thinned for backlash read as less", 3, "");
        if (seen.MateTeeth is not { } mate) yield break;
        var reference = CentreDistance.Reference(teeth + mate, module, helix);
        yield return Size("reference centre distance", reference, "a_d = m_t (z1 + z2) / 2, ISO 21771");
        if (seen.Distance is not { } distance) yield break;
        if (CentreDistance.WorkingAngle(reference, transverse, distance) is not { } working)
        {
            yield return new WorkingLine("working pressure angle" + at, "unknown", "the centre distance may be too small for the two base circles");
            yield break;
        }
        yield return Size("working pressure angle" + at, working, "cos α_wt = a_d cos α_t / a, ISO 21771", 4, "°");
        yield return Size("profile shifts together" + at, CentreDistance.BothShifts(angle, transverse, working, teeth + mate), "x1 + x2 = (z1 + z2) (inv α_wt - inv α_t) / (2 tan α), ISO 21771; backlash reads as more", 3, "");
    }

    private static WorkingLine Size(string what, Interval size, string how, int decimals = 3, string unit = "mm") => new(what, Figure.Of(size, decimals, unit), how);
}

using Crossref.Core.Arithmetic.Gears;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>Which tooth size a gear has, as far as its measurements tell.</summary>
/// <param name="Module">The module; null when they do not tell.</param>
/// <param name="Sure">The same, unless it was found by the tip diameter of teeth whose helix angle is not known.</param>
/// <param name="Within">The span of the modules that it may be, where they do not tell which.</param>
/// <param name="Angle">The pressure angle that the gear may have if none was written: the one its spans speak for, else 20°.</param>
/// <param name="Lines">How it was found.</param>
/// <param name="Answer">What was found, in words.</param>
/// <param name="Cautions">What misleads.</param>
internal sealed record GearFinding(Interval? Module, Interval? Sure, Interval? Within, double Angle, IReadOnlyList<WorkingLine> Lines, string Answer, IReadOnlyList<string> Cautions)
{
    // ISO 53, and what old inch gears have.
    private static readonly double[] UsualAngles = [20, 14.5];

    /// <summary>What is written counts first, then two spans, then the tip diameter.</summary>
    internal static GearFinding Find(GearSizes gear, MeasuredGear seen)
    {
        var (lines, cautions) = (new List<WorkingLine>(), new List<string>());
        var helix = gear.Helix ?? 0.0;
        if (gear.Helix is null)
        {
            lines.Add(new WorkingLine("helix angle", "unknown", "taken as 0° in the lines below: straight teeth"));
            cautions.Add("The helix angle is not known: the figures hold for straight teeth only.");
        }
        Interval? byTip = seen.Tip is { } tip ? GearDiameters.ModuleByTip(gear.Teeth!.Value, tip, helix) : null;
        if (byTip is { } m) lines.Add(Line("module by the tip", m, "m = d_a / (z / cos β + 2), ISO 21771, if the teeth are not profile-shifted"));
        if (seen.Tip is { } across && seen.Root is { } root)
            lines.Add(Line("module by tip and root", GearDiameters.ModuleByDepth(across, root), "m = (d_a - d_f) / 4.5, ISO 53 profile A; profile shift does not mislead it, stub teeth do"));
        if (seen.Distance is { } distance)
            lines.Add(Line("module by the distance", CentreDistance.ModuleByDistance(distance, gear.Teeth!.Value + seen.MateTeeth!.Value, helix), "m = 2 a cos β / (z1 + z2), ISO 21771, if the teeth are not profile-shifted"));
        var bySpans = BySpans(gear, seen, lines, cautions);
        var measure = Measure(gear, helix);
        var (module, how, answer) =
            gear.Module is { } written ? Written(written, GearDiameters.Tip(gear.Teeth!.Value, written, helix), seen.Tip is null)
            : bySpans is not null ? TellSpans(bySpans, seen.Pitch!.Value, gear.PressureAngle is null)
            : byTip is { } apparent ? TellTip(apparent, measure, lines)
            : (null, "nothing measured tells it", $"Not identified: {(seen.Tip is null ? "measure the tip diameter, or " : "")}{measure}.");
        lines.Add(new WorkingLine("module", module is { } known ? Figure.Of(known, 5, "mm") : "unknown", how));
        if (byTip is { } read && module is { } told && !read.Holds(told.Middle) && Math.Abs(read.Middle / told.Middle - 1) > ToothSizes.Near + 1e-9)
            cautions.Add($"The tip diameter points to {Figure.Of(read, 4, "mm")}: profile-shifted teeth, stub teeth, worn tips or another module.");
        else if (byTip is not null && gear.Module is null && bySpans is null)
            cautions.Add($"Profile shift, stub teeth and worn tips mislead a tip diameter; two spans are not misled: {measure}.");
        if (bySpans?.Count > 0 && gear.Module is { } given && !bySpans.Any(f => given.Holds(f.Match.Size.Module) || Math.Abs(given.Middle / f.Match.Size.Module - 1) <= ToothSizes.Margin + 1e-9))
            cautions.Add("The two spans point to another module than the one written.");
        var sure = gear.Helix is null && gear.Module is null && bySpans is null ? null : module;
        IEnumerable<ToothMatch> possible = module is not null ? [] : bySpans is not null ? bySpans.Select(f => f.Match) : byTip is { } one ? ToothSizes.Matching(one) : [];
        return new GearFinding(module, sure, Hull(possible), bySpans?.Count == 1 ? bySpans[0].Angle : UsualAngles[0], lines, answer, cautions);
    }

    private static (Interval?, string, string) Written(Interval module, Interval tip, bool tell)
    {
        var nearest = ToothSizes.Nearest(module);
        var how = nearest.Holds ? $"as written; {Named(nearest.Size)}, {nearest.Size.From}" : $"as written; no size in use, nearest is {Named(nearest.Size)}";
        return (module, how, $"The module is {Figure.Of(module, 5, "mm")}, as written.{(tell ? $" Without profile shift the tip diameter is {Figure.Of(tip, 3, "mm")}." : "")}");
    }

    private static List<(ToothMatch Match, double Angle)>? BySpans(GearSizes gear, MeasuredGear seen, List<WorkingLine> lines, List<string> cautions)
    {
        if (seen.Pitch is not { } pitch) return null;
        lines.Add(new WorkingLine("base pitch", Figure.Of(pitch, 4, "mm"), "p_bn = W_(k+1) - W_k, ISO 21771, whatever the profile shift"));
        if (pitch.Low == pitch.High) cautions.Add("The spans were written without their uncertainty and taken as exact; 0.02 mm are enough to take module 0.8 for 32 DP.");
        var found = new List<(ToothMatch Match, double Angle)>();
        Interval[] angles = gear.PressureAngle is { } known ? [known] : [.. UsualAngles.Select(Interval.Exactly)];
        foreach (var angle in angles)
        {
            var module = BaseTangent.ModuleByPitch(pitch, angle);
            lines.Add(Line($"module by the spans, at {Figure.Of(angle, 2, "°")}", module, "m = p_bn / (π cos α)"));
            foreach (var match in ToothSizes.Matching(module).Where(x => x.Holds))
            {
                found.Add((match, angle.Middle));
                lines.Add(Candidate("candidate by the spans", match));
            }
        }
        return found;
    }

    private static (Interval?, string, string) TellSpans(List<(ToothMatch Match, double Angle)> found, Interval pitch, bool guessed)
    {
        string At(double angle) => guessed ? $" at {Figure.Of(angle, 2, "°")}" : "";
        if (found.Count == 1)
        {
            var (match, angle) = found[0];
            return (match.Size.Module, $"the only size in use with this base pitch{At(angle)}", $"By its two spans this is {Named(match.Size)}{At(angle)}.");
        }
        if (found.Count == 0)
            return (null, "no size in use has this base pitch", $"Not identified: no size in use has a base pitch of {Figure.Of(pitch, 4, "mm")}{(guessed ? " at 20° or 14.5°" : "")}; measure the spans again.");
        return (null, "several sizes in use have this base pitch", $"By its two spans this may be {Or(found.Select(f => Named(f.Match.Size) + At(f.Angle)))}: measure the spans more closely.");
    }

    private static (Interval?, string, string) TellTip(Interval module, string measure, List<WorkingLine> lines)
    {
        var found = ToothSizes.Matching(module);
        lines.AddRange(found.Select(f => Candidate("candidate by the tip", f)));
        if (found.Count == 0)
        {
            var nearest = ToothSizes.Nearest(module);
            return (null, "no size in use is within 1%", $"Not identified: no size in use is within 1% of {Figure.Of(module, 4, "mm")}; nearest is {Named(nearest.Size)}, {Off(nearest)}. Profile-shifted teeth read like this: {measure}.");
        }
        if (found.Count > 1)
            return (null, "several sizes in use are within 1%", $"By its tip diameter this may be {Or(found.Select(f => $"{Named(f.Size)}, {Off(f)}"))}. The tip diameter alone cannot decide: {measure}.");
        var only = found[0];
        if (!only.Holds)
            return (null, "nothing fits within 0.3%", $"Not surely identified: nearest is {Named(only.Size)}, {Off(only)}. Profile-shifted teeth and worn tips read like this: {measure}.");
        var twins = ToothSizes.TwinsOf(only.Size);
        var twin = twins.Count == 0 ? "" : $" Near it lies {Or(twins.Select(Named))}: to be sure, {measure}.";
        return (only.Size.Module, "the only size in use within 1% of the tip's", $"By its tip diameter this is {Named(only.Size)}, {Off(only)}.{twin}");
    }

    // One size alone that was not told is a doubtful one.
    private static Interval? Hull(IEnumerable<ToothMatch> matches)
    {
        var modules = matches.Select(m => m.Size.Module).ToList();
        return modules.Count > 1 ? new Interval(modules.Min(), modules.Max()) : null;
    }

    private static string Measure(GearSizes gear, Interval helix)
    {
        var spanned = GearGeometry.TeethToSpan(gear.Teeth!.Value, gear.PressureAngle ?? UsualAngles[0], helix);
        return $"measure the span over {spanned} and {spanned + 1} teeth";
    }

    private static WorkingLine Line(string what, Interval module, string how) => new(what, Figure.Of(module, 4, "mm"), how);

    private static WorkingLine Candidate(string what, ToothMatch match) =>
        new(what, match.Size.Name, $"{Figure.Of(match.Size.Module, 5, "mm")}, {match.Size.From}; {Off(match)}");

    private static string Named(ToothSize size) => size.Name.EndsWith("DP", StringComparison.Ordinal) ? $"{size.Name} ({Figure.Of(size.Module, 5, "mm")})" : size.Name;

    // From what was measured to the size: "0.06% off".
    private static string Off(ToothMatch match) => $"{Figure.Of(Math.Abs(match.Off) * 100, 2, "%")} off";

    private static string Or(IEnumerable<string> names)
    {
        var all = names.ToList();
        return all.Count == 1 ? all[0] : string.Join("; ", all[..^1]) + "; or " + all[^1];
    }
}

using Crossref.Core.Arithmetic.Gears;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>Reads what is known of a gear and refuses what contradicts itself.</summary>
internal static class GearReader
{
    /// <summary>The inputs of a second gear that ask for a comparison; its teeth alone serve the centre distance.</summary>
    internal static IReadOnlyList<string> Compared { get; } = ["module", "helix", "hand", "pressure-angle", "face", "bore"];

    /// <summary>A gear's own sizes; the inputs' names begin with the prefix.</summary>
    internal static GearSizes Read(CalculatorInputs inputs, string prefix)
    {
        if (inputs.Count(prefix + "teeth") is < 3) inputs.Refuse(prefix + "teeth", "write at least 3 teeth");
        var (helix, hand) = Lean(inputs, prefix);
        var pressureAngle = inputs.Measure(prefix + "pressure-angle");
        if (pressureAngle is { Low: < 5 } or { High: > 45 }) inputs.Refuse(prefix + "pressure-angle", "write an angle between 5° and 45°");
        var module = inputs.Measure(prefix + "module");
        if (prefix.Length == 0 && inputs.Measure("dp") is { } pitch)
        {
            if (module is not null) inputs.Refuse("dp", "write the module or the diametral pitch, not both");
            module = DiametralPitch.ToModule(pitch);
        }
        return new GearSizes
        {
            Teeth = inputs.Count(prefix + "teeth"),
            Module = module,
            PressureAngle = pressureAngle,
            Helix = helix,
            Hand = hand,
            Face = inputs.Measure(prefix + "face"),
            Bore = inputs.Measure(prefix + "bore"),
        };
    }

    /// <summary>The rest of what was measured.</summary>
    internal static MeasuredGear Measured(CalculatorInputs inputs, GearSizes gear, GearSizes other)
    {
        var seen = new MeasuredGear
        {
            Tip = inputs.Measure("tip"),
            Root = inputs.Measure("root"),
            Span = inputs.Measure("span"),
            SpanTeeth = inputs.Count("span-teeth"),
            NextSpan = inputs.Measure("next-span"),
            Distance = inputs.Measure("distance"),
            MateTeeth = other.Teeth,
        };
        if (seen.Tip is { } tip && seen.Root is { } root && root.High >= tip.Low) inputs.Refuse("root", "the root diameter is smaller than the tip diameter; write it so");
        if (seen.Span is null && (seen.NextSpan is not null || seen.SpanTeeth is not null)) inputs.Refuse("span", "write the span that these belong to");
        if (seen.Pitch is { Low: <= 0 }) inputs.Refuse("next-span", "write a span that is longer, also after the uncertainties are taken off");
        if (seen.SpanTeeth >= gear.Teeth) inputs.Refuse("span-teeth", "write fewer teeth than the gear has");
        if (seen.Distance is not null && other.Teeth is null) inputs.Refuse("with-teeth", "count the second gear's teeth; the centre distance says nothing without them");
        return seen;
    }

    /// <summary>What is known of the gear, as parts on record say it.</summary>
    internal static Sought Sought(CalculatorInputs inputs, GearSizes gear)
    {
        var sizes = new Dictionary<string, Size>(StringComparer.Ordinal);
        if (gear.Module is { } module) sizes["module"] = Arithmetic.Sought.WorkedOut(module, Dimension.Length);
        foreach (var name in new[] { "teeth", "face", "helix", "pressure-angle", "bore" })
            if (inputs.Quantity(name) is { } quantity) sizes[name] = Arithmetic.Sought.Written(quantity);
        if (gear.Helix == Interval.Exactly(0)) sizes["helix"] = Arithmetic.Sought.Written(new Quantity(0, 0, Dimension.Angle));
        if (gear.Hand is { } hand) sizes["hand"] = new Size(Word(hand), null);
        return new Sought(PartKind.Find("gear")!, sizes);
    }

    internal static string Word(Hand hand) => hand switch { Hand.Left => "left", Hand.Right => "right", _ => "none" };

    // Straight teeth have the angle 0 and no hand: either says both.
    private static (Interval? Helix, Hand? Hand) Lean(CalculatorInputs inputs, string prefix)
    {
        Hand? hand = inputs.Text(prefix + "hand") switch { "none" => Hand.None, "left" => Hand.Left, "right" => Hand.Right, _ => null };
        if (inputs.Measure(prefix + "helix") is not { } written)
        {
            if (prefix.Length == 0 && hand is Hand.Left or Hand.Right) inputs.Refuse("helix", "teeth that lean have a helix angle: write it, if only roughly, such as 15 +/- 5");
            return (hand == Hand.None ? Interval.Exactly(0) : null, hand);
        }
        if (written.Middle < 0) inputs.Refuse(prefix + "helix", "write the angle without a sign; the hand says which way the teeth lean");
        if (written.High > 60) inputs.Refuse(prefix + "helix", "write an angle up to 60°");
        var helix = new Interval(Math.Max(written.Low, 0), written.High);
        if (hand == Hand.None && helix.Low > 0) inputs.Refuse(prefix + "hand", "teeth at an angle have a hand: write left or right");
        if (hand is Hand.Left or Hand.Right && helix.High == 0) inputs.Refuse(prefix + "hand", "straight teeth have no hand: write none");
        if (hand == Hand.None) return (Interval.Exactly(0), hand);
        return (helix, helix.High == 0 ? Hand.None : hand);
    }
}

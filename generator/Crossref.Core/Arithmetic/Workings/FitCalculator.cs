using Crossref.Core.Arithmetic.Expansion;
using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>A hole and a shaft: how much play they have cold, and how much when hot.</summary>
internal static class FitCalculator
{
    // From memory: skin burns within seconds on metal at this temperature.
    private const double Burns = 50;

    // ITS-90.
    private const double AbsoluteZero = -273.15;

    internal static Calculator Create() => new(
        "fit", "Fit of a hole and a shaft, cold and hot", "Limits of size by ISO 286, the gap between hole and shaft, and what heat makes of it.",
        [
            new("size", "Nominal size", Dimension.Length) { Argument = true, Example = "25", Help = "Needed with a tolerance class." },
            new("hole", "Hole's class", null) { Example = "H7", Help = "ISO 286, in capitals." },
            new("shaft", "Shaft's class", null) { Example = "g6", Help = "ISO 286, in small letters." },
            new("hole-size", "Hole as measured", Dimension.Length) { Example = "12.02 +/- 0.01", Help = "Goes before the class; the class is then what it is held against." },
            new("shaft-size", "Shaft as measured", Dimension.Length) { Example = "11.98 +/- 0.01", Help = "Goes before the class; the class is then what it is held against." },
            new("outer", "Outer part's material", null) { Choices = [.. Material.All.Select(m => m.Name)] },
            new("inner", "Inner part's material", null) { Choices = [.. Material.All.Select(m => m.Name)] },
            new("temperature", "Working temperature", Dimension.Temperature) { Example = "190", MayBeZeroOrLess = true },
            new("start", "Temperature when measured", Dimension.Temperature) { Default = "20", MayBeZeroOrLess = true, Help = "Limits of a class hold at 20 °C (ISO 1)." },
        ],
        Work);

    private static Working? Work(CalculatorInputs inputs, OnRecord record)
    {
        var lines = new List<WorkingLine>();
        var cautions = new List<string>();
        if (inputs.Measure("size") is { HalfWidth: > 0 }) inputs.Refuse("size", "a nominal size has no uncertainty; write a measured one as the hole's or the shaft's");
        if (!inputs.Has("hole") && !inputs.Has("hole-size") && !inputs.Has("shaft") && !inputs.Has("shaft-size"))
            inputs.Refuse("hole", "write the hole or the shaft: its class, such as H7, or what it measures");
        foreach (var name in new[] { "temperature", "start" })
            if (inputs.Measure(name) is { } celsius && celsius.Low < AbsoluteZero) inputs.Refuse(name, "write a temperature above -273.15 °C; nothing is colder");
        var start = inputs.Measure("start")!.Value;
        var hole = Side(inputs, "hole", start, lines);
        var shaft = Side(inputs, "shaft", start, lines);
        if (inputs.Problems.Count > 0) return null;
        if (hole is not { } outside || shaft is not { } inside)
        {
            var (known, other, size) = hole is { } only ? ("hole", "shaft", only) : ("shaft", "hole", shaft!.Value);
            var warm = inputs.Measure("temperature") is { } wanted ? $" and at {Figure.Of(wanted, 1, "°C")}" : "";
            return new Working { Lines = lines, Answer = $"The {known} measures {Figure.Of(size, 4, "mm")} at {Figure.Of(start, 1, "°C")}. Write the {other} too to see how they fit at that{warm}." };
        }
        var (cold, gap) = (Figure.Of(start, 1, "°C"), Fit.Gap(outside, inside));
        lines.Add(new("gap when cold", Figure.Of(gap, 4, "mm"), "hole less shaft; below zero it is interference"));
        lines.Add(new("kind of fit", Fit.Kind(gap), "ISO 286-1: clearance is never tight, interference never loose, transition either"));
        var answer = $"{Capital(Fit.Words(gap, 4))} at {cold}: {Fit.Kind(gap)}.";
        if (inputs.Measure("temperature") is { } hot) answer += Heat(inputs, start, hot, outside, inside, lines, cautions);
        return new Working { Lines = lines, Answer = answer, Cautions = cautions };
    }

    // One side's size: as measured, else by its class.
    private static Interval? Side(CalculatorInputs inputs, string side, Interval start, List<WorkingLine> lines)
    {
        var measured = inputs.Measure(side + "-size");
        if (measured is { } size) lines.Add(new(side, Figure.Of(size, 4, "mm"), "as measured"));
        if (inputs.Text(side) is not { } text) return measured;
        if (inputs.Value("size") is not { } nominal) inputs.Refuse("size", "write the nominal size, such as 25");
        else if (ToleranceClass.Read(text) is not { } written || written.IsHole != (side == "hole"))
            inputs.Refuse(side, side == "hole" ? "write a hole's class alone, with a capital, such as H7" : "write a shaft's class alone, with a small letter, such as g6");
        else if (written.Deviations(nominal, out var problem) is not { } deviation) inputs.Refuse(side, problem);
        else if (measured is null && start != 20) inputs.Refuse("start", "limits of a class hold at 20 °C; write what was measured, or leave this at 20");
        else
        {
            var limits = deviation.Limits(nominal);
            var how = $"ISO 286-1 at 20 °C: {Figure.Number(deviation.Lower, 1)} to {Figure.Number(deviation.Upper, 1)} µm on {Figure.Of(nominal, 4, "mm")}";
            if (measured is not { } held)
            {
                lines.Add(new(side, Figure.Of(limits, 4, "mm"), $"{written} by {how}"));
                return limits;
            }
            var wide = new Interval(limits.Low - 1e-9, limits.High + 1e-9);
            lines.Add(new($"{side} against {written}", wide.Holds(held) ? "inside" : wide.Meets(held) ? "doubtful" : "outside", $"{Figure.Of(limits, 4, "mm")}; {how}"));
        }
        return measured;
    }

    // What heat does; gives the answer's last sentence.
    private static string Heat(CalculatorInputs inputs, Interval start, Interval hot, Interval hole, Interval shaft, List<WorkingLine> lines, List<string> cautions)
    {
        var warm = Figure.Of(hot, 1, "°C");
        var outer = Part("outer part", inputs.Text("outer"), start, hot, hole, lines, cautions);
        var inner = Part("inner part", inputs.Text("inner"), start, hot, shaft, lines, cautions);
        if (hot.High > Burns) cautions.Add("Hot parts burn. Wait until they are cold, and measure them cold: a warm part reads large.");
        if (outer is not { } opens || inner is not { } closes)
        {
            lines.Add(new("gap when hot", "unknown", "the growth of both parts must be known"));
            return $" The gap at {warm} is unknown.";
        }
        var change = ThermalExpansion.GapChange(hole, opens, shaft, closes);
        var gap = Fit.Gap(hole, shaft) + change;
        lines.Add(new("gap change", Figure.Of(change, 3, "mm"), "outer part's growth less inner part's; above zero it opens"));
        lines.Add(new("gap when hot", Figure.Of(gap, 3, "mm"), "both parts warm through and free to grow"));
        if (gap.Low < -1e-9) cautions.Add("Where the parts may press on each other when hot, plastic creeps and is loose once cold; the figure is for parts free to grow.");
        cautions.Add("Expansion is from handbooks, and filled grades grow less. The maker's data sheet decides.");
        return $" At {warm} {Fit.Words(gap, 3)}.";
    }

    private static Interval? Part(string what, string? name, Interval start, Interval hot, Interval size, List<WorkingLine> lines, List<string> cautions)
    {
        if (name is null || Material.Find(name) is not { } material)
        {
            lines.Add(new(what, "unknown", "no material given"));
            cautions.Add($"No material is named for the {what}, so its growth is unknown.");
            return null;
        }
        lines.Add(new(what, material.Label, material.Note.Length > 0 ? $"{material.Source}; {material.Note}" : material.Source));
        var (bears, warm) = (material.Bears(hot), Figure.Of(hot, 1, "°C"));
        lines.Add(new($"{what} bears {warm}", bears, material.Service is { } limit ? $"continuous service ends at {Figure.Of(limit, 0, "°C")}, by source" : "no service temperature on record"));
        if (bears == "doubtful") cautions.Add($"{material.Label} is doubtful at {warm}: sources end at {Figure.Of(material.Service!.Value, 0, "°C")}.");
        if (bears == "not for this temperature") cautions.Add($"{material.Label} is not for {warm}: continuous service ends at {Figure.Of(material.Service!.Value.High, 0, "°C")}.");
        var (sure, reach) = (material.Ranges[0].To, material.Ranges[^1].To);
        var strain = material.Strain(start, hot);
        if (strain is null) cautions.Add($"{material.Label}: expansion is on record from 0 to {Figure.Of(reach, 0, "°C")} only.");
        else if (Math.Max(start.High, hot.High) > sure + 1e-9) cautions.Add($"{material.Label}: above {Figure.Of(sure, 0, "°C")} its growth is an estimate, widened upwards.");
        var how = $"size × expansion (millionths per kelvin) × rise; published to {Figure.Of(sure, 0, "°C")}" + (reach > sure ? $", widened to {Figure.Of(reach, 0, "°C")}" : "");
        lines.Add(new($"{what} grows by", strain is { } known ? Figure.Of(ThermalExpansion.Growth(size, known), 3, "mm") : "unknown", how));
        return strain;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

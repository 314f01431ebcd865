using Crossref.Core.Arithmetic.Springs;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>A compression spring: how stiff it is, and how hard it pushes at a length.</summary>
internal static class SpringCalculator
{
    internal static Calculator Create() => new(
        "spring", "Compression spring from its wire and coils", "The rate of a compression spring from its sizes, and its force at a length.",
        [
            new("wire", "Wire diameter", Dimension.Length) { Required = true, Example = "1.2 +/- 0.01", Help = "Measure bare wire; paint and plating do not push." },
            new("outside", "Outside diameter", Dimension.Length) { Example = "12 +/- 0.05", Help = "Over the coils. Or write the mean diameter." },
            new("mean", "Mean diameter", Dimension.Length) { Example = "10.8", Help = "From wire centre to wire centre." },
            new("coils", "Coils in all", Dimension.Number) { Required = true, Example = "8.5 +/- 0.25", Help = "From wire end to wire end." },
            new("ends", "Ends", null) { Choices = [.. SpringEnds.All.Select(e => e.Name)], Default = "closed", Help = "Closed: the last coil lies against its neighbour." },
            new("material", "Wire's material", null) { Required = true, Choices = [.. SpringWire.All.Select(w => w.Name)] },
            new("free-length", "Free length", Dimension.Length) { Example = "40 +/- 0.2" },
            new("length", "Length when fitted", Dimension.Length) { Example = "30" },
        ],
        Work);

    private static Working? Work(CalculatorInputs inputs, OnRecord record)
    {
        var (wire, coils) = (inputs.Measure("wire")!.Value, inputs.Measure("coils")!.Value);
        var (ends, material) = (SpringEnds.Find(inputs.Text("ends")!)!, SpringWire.Find(inputs.Text("material")!)!);
        if (inputs.Has("outside") == inputs.Has("mean")) inputs.Refuse("outside", "write either the outside or the mean diameter");
        var mean = inputs.Measure("mean") ?? (inputs.Measure("outside") ?? 0) - wire;
        if (inputs.Problems.Count == 0 && mean.Low <= wire.High) inputs.Refuse(inputs.Has("mean") ? "mean" : "outside", "the coil is too small for this wire");
        var active = coils - ends.Idle;
        if (active.Low <= 1e-9) inputs.Refuse("coils", $"write more than {ends.Idle} coils; with these ends so many do not work");
        if (inputs.Has("length") && !inputs.Has("free-length")) inputs.Refuse("free-length", "write the free length too");
        if (inputs.Measure("length") is { } fitted && inputs.Measure("free-length") is { } free && free.Low < fitted.High)
            inputs.Refuse("length", "write a length below the free length, also with both uncertainties");
        if (inputs.Problems.Count > 0) return null;

        var index = mean / wire;
        var rate = CompressionSpring.Rate(material.Shear, wire, mean, active);
        var touching = CompressionSpring.Touching(wire, coils, ends);
        var lines = new List<WorkingLine>
        {
            new("mean diameter", Figure.Of(mean, 3, "mm"), inputs.Has("mean") ? "as written" : "outside diameter less one wire"),
            new("coils that work", Figure.Of(active, 2, ""), $"{ends.Name} ends: {Figure.Number(ends.Idle, 0)} fewer than in all"),
            new("coil index", Figure.Of(index, 2, ""), "mean diameter by wire; EN 15800 is for 4 to 20"),
            new("shear modulus", Figure.Of(material.Shear, 1, "GPa"), $"{material.Label} at room temperature: {material.Source}"),
            new("rate", Figure.Of(rate, 3, "N/mm"), "G × d⁴ / (8 × D³ × n); wire read 1 % too thick makes it 4 % too stiff"),
            new("coils touch at", Figure.Of(touching, 2, "mm"), ends.Extra == 0 ? "coils × wire" : "(coils + 1) × wire"),
        };
        var answer = $"Its rate is {Figure.Of(rate, 3, "N/mm")}.";
        var cautions = new List<string>();
        if (inputs.Measure("length") is { } length)
        {
            var travel = inputs.Measure("free-length")!.Value - length;
            var force = rate * travel;
            lines.Add(new("travel", Figure.Of(travel, 2, "mm"), "free length less fitted length"));
            var never = length.High < touching.Low - 1e-9;
            lines.Add(new("force", never ? "unknown" : Figure.Of(force, 2, "N"), never ? "the coils touch before" : "rate × travel"));
            answer += never
                ? $" It cannot be pressed to {Figure.Of(length, 2, "mm")}: its coils touch at {Figure.Of(touching, 2, "mm")}."
                : $" At {Figure.Of(length, 2, "mm")} it pushes with {Figure.Of(force, 2, "N")}.";
            if (!never && length.Low < touching.High - 1e-9) cautions.Add("At that length the coils may touch: the force is then far higher than worked out here.");
        }
        if (index.Low < 4 - 1e-9 || index.High > 20 + 1e-9) cautions.Add("So tight or so wide a coil is outside the usual range of 4 to 20; the formula is less sure there.");
        cautions.Add("Replace pressure springs in pairs: an old one and a new one press unevenly (trade practice).");
        cautions.Add("A spring under load flies. Release it first, hold it, and wear eye protection.");
        return new Working { Lines = lines, Answer = answer, Cautions = cautions, Sought = Seek(inputs, rate) };
    }

    private static Sought Seek(CalculatorInputs inputs, Interval rate)
    {
        var sizes = new Dictionary<string, Size>(StringComparer.Ordinal) { ["rate"] = Sought.WorkedOut(rate, Dimension.SpringRate) };
        foreach (var name in new[] { "wire", "free-length" })
            if (inputs.Quantity(name) is { } quantity) sizes[name] = Sought.Written(quantity);
        return new Sought(PartKind.Find("spring")!, sizes);
    }
}

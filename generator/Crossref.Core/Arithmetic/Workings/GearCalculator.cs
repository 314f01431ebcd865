using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>A gear from what can be counted and measured on it; whether it meshes with a second one or may replace it.</summary>
internal static class GearCalculator
{
    private const string MoreSizes = "More about this gear";
    private const string Spans = "Measured over two spans";
    private const string SecondGear = "A second gear: does it mesh, may it replace it?";
    private static readonly string[] Hands = ["none", "left", "right"];

    internal static Calculator Create() => new(
        "gear",
        "Gear from its teeth and tip",
        "Names the module or diametral pitch of an external spur or helical gear, its other sizes, and whether it meshes with a second gear or may replace it.",
        [
            new("teeth", "Teeth", Dimension.Number) { Whole = true, Required = true, Example = "32", Help = "Mark one tooth and count around." },
            new("tip", "Tip diameter", Dimension.Length) { Example = "34.02 +/- 0.02", Help = "With an odd number of teeth: twice from the bore's edge to a tip, plus the bore." },
            new("helix", "Helix angle", Dimension.Angle) { Example = "15", MayBeZeroOrLess = true, Help = "0 for straight teeth." },
            new("root", "Root diameter", Dimension.Length) { Group = MoreSizes, Example = "29.5 +/- 0.1" },
            new("hand", "Hand", null) { Group = MoreSizes, Choices = Hands, Help = "Which way the teeth rise with the axis upright; none for straight teeth." },
            new("pressure-angle", "Pressure angle", Dimension.Angle) { Group = MoreSizes, Example = "20", Help = "20° is usual (ISO 53), 14.5° on old inch gears; leave it empty unless it is known." },
            new("module", "Module", Dimension.Length) { Group = MoreSizes, Example = "1", Help = "Normal module, if it is known." },
            new("dp", "Diametral pitch", Dimension.Number) { Group = MoreSizes, Example = "32", Help = "Teeth per inch of diameter, if it is known." },
            new("face", "Face width", Dimension.Length) { Group = MoreSizes, Example = "10" },
            new("bore", "Bore", Dimension.Length) { Group = MoreSizes, Example = "8" },
            new("span", "Span", Dimension.Length) { Group = Spans, Example = "10.77 +/- 0.01", Help = "Flat jaws over several teeth, touching two flanks." },
            new("span-teeth", "Teeth in the span", Dimension.Number) { Group = Spans, Whole = true, Example = "4" },
            new("next-span", "Span over one tooth more", Dimension.Length) { Group = Spans, Example = "13.72 +/- 0.01", Help = "The difference of the two spans gives the module whatever the profile shift." },
            new("distance", "Centre distance", Dimension.Length) { Group = SecondGear, Example = "30 +/- 0.05", Help = "To the shaft of the second gear, in mesh." },
            new("with-teeth", "Second gear: teeth", Dimension.Number) { Group = SecondGear, Whole = true, Example = "28" },
            new("with-module", "Second gear: module", Dimension.Length) { Group = SecondGear, Example = "1" },
            new("with-helix", "Second gear: helix angle", Dimension.Angle) { Group = SecondGear, Example = "15", MayBeZeroOrLess = true },
            new("with-hand", "Second gear: hand", null) { Group = SecondGear, Choices = Hands },
            new("with-pressure-angle", "Second gear: pressure angle", Dimension.Angle) { Group = SecondGear, Example = "20" },
            new("with-face", "Second gear: face width", Dimension.Length) { Group = SecondGear, Example = "10" },
            new("with-bore", "Second gear: bore", Dimension.Length) { Group = SecondGear, Example = "8" },
        ],
        Work);

    private static Working? Work(CalculatorInputs inputs, OnRecord record)
    {
        var gear = GearReader.Read(inputs, "");
        var other = GearReader.Read(inputs, "with-");
        var seen = GearReader.Measured(inputs, gear, other);
        if (inputs.Problems.Count > 0) return null;
        var found = GearFinding.Find(gear, seen);
        gear = gear with { Module = found.Module };
        var compared = GearReader.Compared.Any(name => inputs.Has("with-" + name)) ? GearVerdict.On(gear with { Module = found.Sure }, other) : null;
        return new Working
        {
            Lines = [.. found.Lines, .. GearGeometry.Lines(gear, found.Angle, seen), .. compared?.Lines ?? []],
            Answer = string.Join(' ', [found.Answer, .. compared?.Answers ?? []]),
            Cautions = [.. found.Cautions, .. compared?.Cautions ?? []],
            Sought = GearReader.Sought(inputs, gear with { Module = found.Module ?? found.Within }) with { Doubtful = found.Within is null ? null : "module" },
        };
    }
}

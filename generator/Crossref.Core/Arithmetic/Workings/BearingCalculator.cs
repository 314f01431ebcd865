using Crossref.Core.Arithmetic.Bearings;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>A bearing from its number, from what was measured, or one held against the other.</summary>
internal static class BearingCalculator
{
    internal static readonly string[] Sizes = ["bore", "outside", "width"];

    internal static Calculator Create() => new(
        "bearing", "Bearing from its number or its sizes", "What a ball bearing's number says, which bearings have the sizes measured, and whether the two agree.",
        [
            new("designation", "Bearing number", null) { Argument = true, Example = "6901-2RS", Help = "As it stands on the ring or in the list." },
            new("bore", "Bore", Dimension.Length) { Example = "12 +/- 0.02" },
            new("outside", "Outside diameter", Dimension.Length) { Example = "24 +/- 0.02", Help = "Without the flange." },
            new("width", "Width", Dimension.Length) { Example = "6 +/- 0.05", Help = "Of one ring." },
        ],
        Work);

    private static Working? Work(CalculatorInputs inputs, OnRecord record)
    {
        BearingDesignation? bearing = null;
        if (inputs.Text("designation") is { } text && !BearingDesignation.TryRead(text, out bearing, out var problem)) inputs.Refuse("designation", problem);
        else if (bearing is null && !Sizes.Any(inputs.Has)) inputs.Refuse("designation", "write the bearing's number, or what was measured of it");
        if (inputs.Measure("bore") is { } bore && inputs.Measure("outside") is { } outside && bore.Low >= outside.High)
            inputs.Refuse("outside", "write the outside diameter, which is larger than the bore; these two look swapped");
        if (inputs.Problems.Count > 0) return null;

        var lines = new List<WorkingLine>();
        var answer = new List<string>();
        if (bearing is not null) answer.Add(BearingNumberLines.Add(bearing, lines));
        var contradicted = false;
        if (bearing is not null && Sizes.Any(inputs.Has))
        {
            var compared = BearingSizeLines.Compare(bearing, inputs, lines, out contradicted);
            answer.Insert(contradicted ? 0 : 1, compared);
        }
        if (Sizes.Any(inputs.Has)) answer.Add(BearingSizeLines.Find(inputs, lines, asked: bearing is null || contradicted));

        var cautions = new List<string>
        {
            "An interchange needs the same sizes, flange and clearance, a closure at least as good, and grease and cage that stand at least the same heat.",
            "What heat grease and cage stand is not in the number. In a hot place, such as a fixing unit, they decide.",
        };
        if (Sizes.Any(inputs.Has))
        {
            cautions.Add("The sizes say nothing of clearance and closure: read them off the ring.");
            cautions.Add("A row marked open holds for the open bearing; with shields or seals a small bearing may be wider.");
            cautions.Add("Another kind of bearing, such as one that turns one way only, may have the same sizes and not do the same work (from memory).");
        }
        if (contradicted) cautions.Insert(0, "Number and piece contradict each other. Parts on record are looked for by what was measured alone; read the number again.");
        if (Sizes.Any(s => inputs.Measure(s) is { HalfWidth: 0 })) cautions.Add("A size without its uncertainty counts as exact. Write 12 +/- 0.02 for a calliper.");
        return new Working { Lines = lines, Answer = string.Join(' ', answer.Where(a => a.Length > 0)), Cautions = cautions, Sought = Seek(contradicted ? null : bearing, inputs) };
    }

    // The number's sizes go before the measured ones. Its flange counts too; a closure need not be the same to do.
    private static Sought Seek(BearingDesignation? bearing, CalculatorInputs inputs)
    {
        var known = bearing is null ? new Dictionary<string, Size>() : BearingSizes.Of(bearing);
        var sizes = new Dictionary<string, Size>(StringComparer.Ordinal);
        foreach (var name in Sizes)
        {
            if (known.TryGetValue(name, out var size)) sizes[name] = size;
            else if (inputs.Quantity(name) is { } quantity) sizes[name] = Sought.Written(quantity);
        }
        if (known.TryGetValue("flange", out var flange)) sizes["flange"] = flange;
        return new Sought(PartKind.Find("bearing")!, sizes);
    }
}

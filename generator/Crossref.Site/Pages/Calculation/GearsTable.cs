using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Gears;
using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Site.Pages.Calculation;

/// <summary>The tooth sizes in use, and how far the sizes of two gears may differ.</summary>
internal static class GearsTable
{
    private static readonly PartKind Gear = PartKind.Find("gear")!;

    internal static JsonObject Json() => new()
    {
        ["sizes"] = new JsonArray([.. ToothSizes.All.Select(s => new JsonObject { ["name"] = s.Name, ["module"] = s.Module, ["from"] = s.From })]),
        ["tolerances"] = new JsonObject(Gear.Deciding.Where(a => a != "hand").Select(a => KeyValuePair.Create(a, (JsonNode?)Bands(a)))),
    };

    // A module's tolerance is a share of it, so that of 1 mm is the share.
    private static JsonArray Bands(string attribute) => attribute == "module"
        ? [Band(attribute, 1, "share")]
        : [.. SizeBand.All.Select(b => b.UpTo).Concat(GeneralTolerance.Bands.Select(b => b.UpTo)).Distinct().Order().Select(upTo => Band(attribute, upTo, "width"))];

    private static JsonObject Band(string attribute, double upTo, string kind)
    {
        var tolerance = WorkingTolerance.Of(Gear, attribute, upTo);
        return new JsonObject { ["upTo"] = upTo, [kind] = tolerance.Width, ["reason"] = tolerance.Reason };
    }
}

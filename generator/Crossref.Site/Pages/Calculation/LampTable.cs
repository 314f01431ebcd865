using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Lamps;
using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Site.Pages.Calculation;

/// <summary>Supply voltages, exponents and cautions for heater lamps.</summary>
internal static class LampTable
{
    internal static JsonObject Json() => new()
    {
        ["coldToHot"] = CalculatorTables.Json(Lamp.ColdToHot),
        ["unmeasuredLeads"] = CalculatorTables.Json(Lamp.UnmeasuredLeads),
        ["power"] = CalculatorTables.Json(Rerating.Power),
        ["current"] = CalculatorTables.Json(Rerating.Current),
        ["flux"] = CalculatorTables.Json(Rerating.Flux),
        ["life"] = CalculatorTables.Json(Rerating.Life),
        ["mildLife"] = CalculatorTables.Json(Rerating.MildLife),
        ["reach"] = Rerating.Reach,
        ["supplies"] = new JsonArray([.. SupplyVoltage.All.Select(s => new JsonObject { ["volts"] = s.Volts, ["band"] = CalculatorTables.Json(s.Band), ["source"] = s.Source })]),
        ["tolerances"] = new JsonObject(PartKind.Find("lamp")!.Deciding.Where(a => SizeName.Find(a)!.Measures is not null).Select(Tolerance)),
        ["cautions"] = CalculatorTables.Json(LampCautions.All),
    };

    // Lengths have a table of bands, everything else a share of the value.
    private static KeyValuePair<string, JsonNode?> Tolerance(string attribute)
    {
        var (share, reason) = WorkingTolerance.Of(PartKind.Find("lamp")!, attribute, 1);
        var json = new JsonObject { ["reason"] = reason };
        if (SizeName.Find(attribute)!.Measures == Dimension.Length)
            json["bands"] = new JsonArray([.. GeneralTolerance.Bands.Select(b => new JsonObject { ["upTo"] = b.UpTo, ["deviation"] = b.Deviation })]);
        else json["share"] = share;
        return KeyValuePair.Create(attribute, (JsonNode?)json);
    }
}

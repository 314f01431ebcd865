using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Lamps;

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
        ["cautions"] = CalculatorTables.Json(LampCautions.All),
    };
}

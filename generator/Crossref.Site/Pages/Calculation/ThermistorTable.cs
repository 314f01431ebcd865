using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Thermistors;

namespace Crossref.Site.Pages.Calculation;

/// <summary>Where the law of thermistors is used, and the cautions.</summary>
internal static class ThermistorTable
{
    internal static JsonObject Json() => new()
    {
        ["range"] = CalculatorTables.Json(Thermistor.Range),
        ["credibleB"] = CalculatorTables.Json(Thermistor.CredibleB),
        ["cautions"] = CalculatorTables.Json(ThermistorCautions.All),
    };
}

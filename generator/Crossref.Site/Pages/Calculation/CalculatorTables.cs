using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic;
using Crossref.Core.Quantities;

namespace Crossref.Site.Pages.Calculation;

/// <summary>The tables that the site's calculators read: the very ones that the commands use, so that neither can drift.</summary>
internal static class CalculatorTables
{
    /// <summary>All tables, by the name under which the scripts find them.</summary>
    internal static JsonObject All() => new()
    {
        ["units"] = Units(),
        ["tolerances"] = TolerancesTable.Json(),
        ["bearings"] = BearingTables.All(),
        ["limits"] = LimitsTable.All(),
        ["materials"] = MaterialTable.All(),
        ["springs"] = SpringTable.All(),
        ["gears"] = GearsTable.Json(),
        ["lamp"] = LampTable.Json(),
        ["thermistor"] = ThermistorTable.Json(),
        ["repeat"] = RepeatTable.Json(),
        ["spares"] = SparesTable.Json(),
    };

    /// <summary>An interval as the scripts have it.</summary>
    internal static JsonObject Json(Interval interval) => new() { ["low"] = interval.Low, ["high"] = interval.High };

    /// <summary>Texts, such as cautions.</summary>
    internal static JsonArray Json(IEnumerable<string> texts) => new([.. texts.Select(t => JsonValue.Create(t))]);

    private static JsonObject Units() => new(Enum.GetValues<Dimension>().Select(d => KeyValuePair.Create(
        d.ToString(),
        (JsonNode?)new JsonArray([.. UnitTable.Factors(d).Select(u => new JsonObject { ["symbol"] = u.Symbol, ["factor"] = (double)u.Factor })]))));
}

using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Spares;

namespace Crossref.Site.Pages.Calculation;

/// <summary>How far the sums of spares hold, and the cautions.</summary>
internal static class SparesTable
{
    internal static JsonObject Json() => new()
    {
        ["most"] = Poisson.Most,
        ["covers"] = CalculatorTables.Json(Poisson.Covers),
        ["level"] = FailureCount.Level,
        ["cautions"] = CalculatorTables.Json(SparesCautions.All),
    };
}

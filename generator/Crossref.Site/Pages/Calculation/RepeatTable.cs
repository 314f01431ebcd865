using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Rolling;

namespace Crossref.Site.Pages.Calculation;

/// <summary>The cautions for marks that repeat.</summary>
internal static class RepeatTable
{
    internal static JsonObject Json() => new() { ["cautions"] = CalculatorTables.Json(RepeatCautions.All) };
}

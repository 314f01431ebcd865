using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic.Gears;

namespace Crossref.Site.Pages.Calculation;

/// <summary>The tooth sizes in use.</summary>
internal static class GearsTable
{
    internal static JsonArray Json() => [.. ToothSizes.All.Select(s => new JsonObject { ["name"] = s.Name, ["module"] = s.Module, ["from"] = s.From })];
}

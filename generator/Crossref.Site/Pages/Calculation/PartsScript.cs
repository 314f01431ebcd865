using System.Text.Json.Nodes;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Pages.Pieces;

namespace Crossref.Site.Pages.Calculation;

/// <summary>
/// The script that hands a calculator's page the parts of its kind of which a deciding size is known, in order of id. Only
/// that page loads it, so that a large library slows no other. Plain ASCII, as <see cref="CalculatorScript"/>.
/// </summary>
internal static class PartsScript
{
    internal static string Path(PartKind kind) => $"calculator-parts-{kind.Name}.js";

    internal static SiteFile Of(Desk desk, PartKind kind)
    {
        var views = new CandidateViews(desk, desk.LinksFrom(Path(kind)));
        var parts = RecordIndex.Sorted(desk.Library.Parts.Values).Where(p => p.Kind == kind).Select(p => Json(p, desk, views)).OfType<JsonObject>();
        return SiteFile.Text(Path(kind), $"window.crossrefParts = {new JsonArray([.. parts]).ToJsonString()};\n");
    }

    private static JsonObject? Json(Part part, Desk desk, CandidateViews views)
    {
        var known = SizeBook.Of(part);
        var deciding = part.Kind.Deciding.Where(known.ContainsKey).Select(a => KeyValuePair.Create(a, Size(a, known[a].Size))).ToList();
        return deciding.Count == 0 ? null : new JsonObject
        {
            ["id"] = part.Id,
            ["number"] = part.CurrentNumber,
            ["name"] = part.Name,
            ["page"] = desk.Map.Of(part)!.Value.Path,
            ["safety"] = part.IsSafety,
            ["house"] = views.StockText(part.Id),
            ["known"] = known.Count,
            ["sizes"] = new JsonObject(deciding),
        };
    }

    private static JsonNode? Size(string attribute, Size size) => size.Quantity is { } quantity
        ? new JsonObject { ["value"] = (double)quantity.Value, ["uncertainty"] = (double)quantity.Uncertainty }
        : SizeWord.Meaning(attribute, size.Text);
}

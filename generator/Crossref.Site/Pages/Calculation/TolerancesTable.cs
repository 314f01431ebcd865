using System.Text.Json.Nodes;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Bearings;
using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Site.Pages.Calculation;

/// <summary>How far two sizes may be apart: by kind and attribute, in the order in which attributes decide; null for a word.</summary>
internal static class TolerancesTable
{
    // Between two of these no tolerance changes its width.
    private static readonly IReadOnlyList<double> Ends =
    [
        .. SizeBand.All.Select(b => b.UpTo).Concat(GeneralTolerance.Bands.Select(b => b.UpTo))
            .Concat(BearingTolerance.Bands.SelectMany(b => new[] { b.Over, b.Including })).Distinct().Order(),
    ];

    internal static JsonObject Json() => new(Calculators.All.Select(c => c.Seeks).OfType<PartKind>().Select(k => KeyValuePair.Create(k.Name, (JsonNode?)Of(k))));

    private static JsonObject Of(PartKind kind) => new(kind.Deciding.Select(a =>
        KeyValuePair.Create(a, (JsonNode?)(SizeName.Find(a)!.Measures is null ? null : Bands(kind, a)))));

    private static JsonArray Bands(PartKind kind, string attribute)
    {
        var bands = Ends.Append(double.MaxValue).Select(upTo => (UpTo: upTo, Tolerance: WorkingTolerance.Of(kind, attribute, upTo))).ToList();
        return
        [
            .. bands.Where((b, i) => i == bands.Count - 1 || (b.Tolerance.Share is null && b.Tolerance != bands[i + 1].Tolerance)).Select(b => new JsonObject
            {
                ["upTo"] = b.UpTo, [b.Tolerance.Share is null ? "width" : "share"] = b.Tolerance.Share ?? b.Tolerance.Width, ["reason"] = b.Tolerance.Reason,
            }),
        ];
    }
}

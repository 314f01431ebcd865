using System.Globalization;
using Crossref.Core.Records;
using static Crossref.Site.Sheets.SheetField;

namespace Crossref.Site.Sheets;

/// <summary>The columns of <c>parts.csv</c>: everything that a part's record says, but for its pictures.</summary>
internal static class PartColumns
{
    private static readonly Dictionary<string, string[]> SizeSynonyms = new(StringComparer.Ordinal)
    {
        ["bore"] = ["bore mm", "inner diameter", "inside diameter", "inner dia"],
        ["outside"] = ["outside mm", "outer diameter", "outside diameter", "outer dia", "OD"],
        ["width"] = ["width mm"],
        ["length"] = ["length mm"],
        ["volts"] = ["voltage"],
        ["watts"] = ["wattage", "power"],
        ["amps"] = ["current"],
        ["teeth"] = ["number of teeth"],
    };

    internal static IReadOnlyList<SheetField> All { get; } =
    [
        Of<Part>("part", "id", p => p.Id, "part id"),
        Of<Part>("kind", "kind", p => p.Kind.Name, "type", "category", "part kind"),
        Of<Part>("name", "name", p => p.Name, "description", "part name", "title", "item"),
        Of<Part>("maker", "maker", p => p.Maker, "manufacturer", "make", "brand", "mfr"),
        Of<Part>("numbers", "number", p => ListCell.Write(p.Numbers.Select(n => n.Id)),
            "part number", "part numbers", "part no", "no", "pn", "oem", "oem number", "article", "article number", "article no", "item no", "item number", "reference"),
        Of<Part>("earlier-numbers", "earlier numbers", p => ListCell.Write(p.EarlierNumbers.Select(n => n.Id)), "earlier number", "old number", "old numbers", "previous number"),
        Of<Part>("also", "also", p => ListCell.Write(p.Also.Select(Also)), "other numbers", "cross reference"),
        Of<Part>("aliases", "aliases", p => ListCell.Write(p.Aliases), "alias", "also called", "nickname"),
        Of<Part>("superseded-by", "superseded by", p => p.SupersededBy?.Id, "replaced by"),
        Of<Part>("source", "source", p => p.Source?.Id),
        Of<Part>("standard", "standard", p => p.Standard, "designation"),
        .. SizeName.All.Select(Size),
        Of<Part>("handed", "handed", p => Yes(p.Handed)),
        Of<Part>("hand", "hand", p => p.Hand, "left or right"),
        Of<Part>("mirror", "mirror", p => p.Mirror?.Id),
        Of<Part>("contains", "contains", p => ListCell.Write(p.Contains.Select(k => $"{k.Quantity} x {k.Part.Id}")), "kit", "kit contents"),
        Figure<Part>("life", "life", p => p.Life is { } life ? $"{Number(life.Value)} {Words.Of(life.Unit)}" : null),
        Figure<Part>("price", "price", p => Number(p.Price), "cost", "unit price"),
        Figure<Part>("lead-days", "lead days", p => Number(p.LeadDays), "lead time", "lead time days", "delivery days"),
        Of<Part>("safety", "safety", p => Yes(p.Safety), "safety part"),
        Of<Part>("retired", "retired", p => Yes(p.Retired)),
        Of<Part>("note", "note", p => p.Note, "notes", "remark", "remarks", "comment", "comments"),
    ];

    internal static string? Yes(bool value) => value ? "yes" : null;

    internal static string? Number(decimal? value) => value?.ToString("0.############", CultureInfo.InvariantCulture);

    // A part may be of the left hand and a clutch may turn to it: two columns.
    private static SheetField Size(SizeName size) =>
        new(size.Name, size.Name == "hand" ? "size hand" : size.Name.Replace('-', ' '), r => ((Part)r).Sizes.GetValueOrDefault(size.Name)?.Text)
        {
            IsSize = true,
            IsFigure = size.Measures is not null,
            Synonyms = SizeSynonyms.GetValueOrDefault(size.Name, []),
        };

    private static string Also(AlsoNumber also) =>
        ListCell.Write(also.Source is { } source ? [also.Maker, also.Number.Id, source.Id] : [also.Maker, also.Number.Id], ListCell.Within);
}

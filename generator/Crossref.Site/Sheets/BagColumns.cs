using System.Globalization;
using Crossref.Core.Records;
using static Crossref.Site.Sheets.SheetField;

namespace Crossref.Site.Sheets;

/// <summary>The columns of <c>bags.csv</c>: everything that a bag's record says.</summary>
internal static class BagColumns
{
    internal static IReadOnlyList<SheetField> All { get; } =
    [
        Of<Bag>("bag", "id", b => b.Id, "bag id", "bag number", "bag no"),
        Of<Bag>("part", "part", b => b.Part.Id, "part id", "part number", "part no", "pn", "article", "article number", "item number"),
        Figure<Bag>("quantity", "quantity", b => b.Quantity.ToString(CultureInfo.InvariantCulture), "qty", "pieces", "pcs", "amount", "stock"),
        Of<Bag>("grade", "grade", b => Words.Of(b.Grade), "condition", "state", "quality"),
        Of<Bag>("bin", "bin", b => b.Bin, "location", "drawer", "shelf", "place"),
        Of<Bag>("from", "from", b => b.From?.Id, "came from", "origin"),
        Of<Bag>("position", "position", b => b.Position?.Id),
        .. Enum.GetValues<CountUnit>().Select(Counter),
        Of<Bag>("number", "number moulded", b => b.Number, "number on it", "marking"),
        Of<Bag>("date", "date", b => b.Date.IsUnknown ? null : b.Date.ToString(), "bagged", "bagged on", "date bagged"),
        Of<Bag>("tested-by", "tested by", b => b.TestedBy, "tester"),
        Of<Bag>("defect", "defect", b => b.Defect, "fault", "damage"),
        Of<Bag>("retired", "retired", b => PartColumns.Yes(b.Retired)),
        Of<Bag>("note", "note", b => b.Note, "notes", "remark", "remarks", "comment", "comments"),
    ];

    private static SheetField Counter(CountUnit unit) =>
        Figure<Bag>(Words.Of(unit), Words.Of(unit), b => b.Counter is { } counter && counter.Unit == unit ? PartColumns.Number(counter.Value) : null);
}

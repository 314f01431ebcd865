using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>Parts.</summary>
internal static class PartMapper
{
    internal static Part Map(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Kind = PartKind.Find(f.TextOr("kind", "")) ?? PartKind.Other,
        Name = f.TextOr("name", id),
        Maker = f.Text("maker"),
        Numbers = f.Refs("numbers"),
        EarlierNumbers = f.Refs("earlier-numbers"),
        Also = [.. f.Maps("also").Where(a => a.Text("number") is not null).Select(a => new AlsoNumber(a.TextOr("maker", ""), a.RequiredRef("number"), a.Ref("source")))],
        Aliases = f.Texts("aliases"),
        SupersededBy = f.Ref("superseded-by"),
        Source = f.Ref("source"),
        Standard = f.Text("standard"),
        Sizes = f.Pairs("size").ToDictionary(p => p.Key, p => Size(p.Key, p.Text), StringComparer.Ordinal),
        Handed = f.Yes("handed"),
        Hand = f.Text("hand"),
        Mirror = f.Ref("mirror"),
        Contains = [.. f.Maps("contains").Where(k => k.Text("part") is not null).Select(k => new KitItem(k.RequiredRef("part"), k.Whole("quantity", 1)))],
        Life = f.Text("life") is { } life && Shapes.Scalars.TryLife(life, out var count) ? count : null,
        Price = f.Decimal("price"),
        LeadDays = f.Decimal("lead-days"),
        Safety = f.Yes("safety"),
        Pictures = f.Pictures,
        Note = f.Text("note"),
    };

    private static Size Size(string name, string text) =>
        SizeName.Find(name)?.Measures is { } dimension && QuantityParser.TryParse(text, dimension, out var quantity, out _)
            ? new Size(text, quantity)
            : new Size(text, null);
}

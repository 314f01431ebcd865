using Crossref.Core.Records;

namespace Crossref.Site.Reading.Shapes;

/// <summary>The whole format: one shape per record type.</summary>
internal static class RecordShapes
{
    /// <summary>Every document that YAML may hold, in the order of <see cref="RecordType"/>.</summary>
    internal static IReadOnlyList<MapShape> Documents { get; } =
    [
        ShopShapes.Library, CatalogueShapes.Family, CatalogueShapes.Part, CatalogueShapes.Source, ShopShapes.Claim,
        ShopShapes.Repair, ShopShapes.Machine, ShopShapes.Unit, ShopShapes.Bag, ShopShapes.Order, CatalogueShapes.Symptom,
        ShopShapes.Question,
    ];

    /// <summary>The words a document may begin with.</summary>
    internal static IReadOnlyList<string> FirstKeys { get; } = [.. Documents.Select(d => d.Name)];

    /// <summary>The shape of documents that begin with this key; null when none do.</summary>
    internal static MapShape? Find(string firstKey) => Documents.FirstOrDefault(d => d.Name == firstKey);
}

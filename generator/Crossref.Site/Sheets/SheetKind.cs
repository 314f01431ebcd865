using Crossref.Core.Records;
using Crossref.Site.Reading.Shapes;

namespace Crossref.Site.Sheets;

/// <summary>What a sheet may be that is read.</summary>
/// <param name="Name">As it is named on the command line.</param>
/// <param name="Shape">The keys of its records.</param>
/// <param name="Folder">The folder for what is new.</param>
/// <param name="Fields">Its columns.</param>
internal sealed record SheetKind(string Name, MapShape Shape, string Folder, IReadOnlyList<SheetField> Fields)
{
    internal static SheetKind Parts { get; } = new("parts", CatalogueShapes.Part, "parts", PartColumns.All);

    internal static SheetKind Bags { get; } = new("bags", ShopShapes.Bag, "shop", BagColumns.All);

    internal static IReadOnlyList<SheetKind> All { get; } = [Parts, Bags];

    /// <summary>The column with that heading, whatever its case and punctuation; null when nobody knows it.</summary>
    internal SheetField? Find(string heading)
    {
        var plain = Plain(heading);
        return plain.Length == 0 ? null
            : Fields.FirstOrDefault(f => Plain(f.Title) == plain) ?? Fields.FirstOrDefault(f => f.Synonyms.Append(f.Key).Any(s => Plain(s) == plain));
    }

    /// <summary>What the shape says of a column.</summary>
    internal ValueShape ShapeOf(SheetField field) =>
        field.IsSize ? ShapeChecker.SizeShape(SizeName.Find(field.Key)!) : Shape.Find(field.Key)!.Value;

    private static string Plain(string heading) => string.Concat(heading.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}

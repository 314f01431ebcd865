using CsCheck;
using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Size = Crossref.Core.Records.Size;

namespace Crossref.Core.Tests.Sizes;

/// <summary>Parts of one kind with sizes that lie together, so that many are just inside and just outside of what counts as the same.</summary>
internal static class RandomParts
{
    // Ends of the bands of ISO 492, ISO 286 and ISO 2768, and sizes between them.
    internal static readonly decimal[] Centres = [0.6m, 1, 6, 10, 17.02m, 30, 120, 400, 4000, 100_000];

    private static readonly string[] Words = ["2Z", "2Z", "zz", "ZZ", "open", "none", " None", "13.2", "13.20 mm"];

    internal static readonly Place Nowhere = new("x.yaml", 1, 1);

    internal static Gen<PartKind> Kinds { get; } = OneOf([.. PartKind.All]);

    /// <summary>A library of up to 40 parts of a kind, with every size of most.</summary>
    internal static Gen<Library> Of(PartKind kind, decimal centre) =>
        from sizes in Gen.Select(Sizes(kind, centre), Gen.Bool, Gen.Int[0, 9]).Array[2, 40]
        select Library([.. sizes.Select((s, i) => new Part
        {
            Id = $"part-{(i * 17) % 40:00}", Place = Nowhere, Kind = kind, Name = $"Part {i}", Retired = s.Item2 && s.Item3 == 0, Sizes = s.Item1,
        })]);

    internal static Gen<Dictionary<string, Size>> Sizes(PartKind kind, decimal centre) =>
        from sizes in kind.Deciding.Aggregate(Gen.Const<IEnumerable<Size>>([]), (all, a) => Gen.Select(all, One(kind, a, centre), (sizes, size) => sizes.Append(size)))
        from missing in Gen.Int[-3, kind.Deciding.Count]
        select kind.Deciding.Zip(sizes).Where((_, i) => i != missing).ToDictionary(s => s.First, s => s.Second, StringComparer.Ordinal);

    internal static Gen<Size> One(PartKind kind, string attribute, decimal centre) => SizeName.Find(attribute)!.Measures is { } dimension
        ? from off in OneOf(0.0, 0, 0, 0, 0, 0, 0.1, 0.5, 0.999999, 1, 1.000001, 1.5, 3)
          from up in Gen.Bool
          from uncertainty in Gen.Frequency((12, Gen.Const(0m)), (3, Gen.Decimal[0, 0.05m]), (1, Gen.Decimal[0, centre]))
          let width = WorkingTolerance.Of(kind, attribute, (double)centre).Width
          select Measured(centre + (decimal)(width * off * (up ? 1 : -1)), uncertainty, dimension)
        : from word in OneOf(Words) select new Size(word, null);

    internal static Size Measured(decimal value, decimal uncertainty, Dimension dimension)
    {
        var quantity = new Quantity(value, uncertainty, dimension);
        return new Size(quantity.ToString(), quantity);
    }

    internal static Gen<T> OneOf<T>(params IReadOnlyList<T> from) => Gen.Int[0, from.Count - 1].Select(i => from[i]);

    internal static Library Library(params IReadOnlyList<IRecord> records) => new(new LibraryRecord { Id = "shop", Place = Nowhere, Title = "Shop" }, records);
}

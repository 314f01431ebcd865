using CsCheck;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Size = Crossref.Core.Records.Size;

namespace Crossref.Core.Tests.Sizes;

public sealed class SizeBookTests
{
    [Fact]
    public void Same_sized_parts_are_those_that_comparing_every_pair_finds()
    {
        var (same, different) = (0, 0);
        Gen.Select(RandomParts.Kinds, RandomParts.OneOf(RandomParts.Centres)).SelectMany(x => RandomParts.Of(x.Item1, x.Item2)).Sample(library =>
        {
            var book = new SizeBook(library);
            foreach (var part in library.Parts.Values)
            {
                var naive = library.Parts.Values.Where(p => p != part && !p.Retired && part.Kind.Deciding.Count > 0 && AgreeInAll(part, p)).Select(p => p.Id).Order(StringComparer.Ordinal).ToList();
                Assert.Equal(naive, book.SameAs(part.Id));
                Interlocked.Add(ref same, naive.Count);
                Interlocked.Add(ref different, library.Parts.Count - naive.Count);
            }
        }, iter: 2000);
        Assert.True(same > 1000, $"only {same} alike");
        Assert.True(different > 1000, $"only {different} different");
    }

    // A part below the end of a band and one above it, of which the larger allows far more than twice as much.
    [Theory]
    [InlineData("sleeve", 119.9, 120.2)]
    [InlineData("bearing", 0.6, 0.605)]
    public void Same_size_holds_both_ways_across_the_end_of_a_band(string name, double one, double other)
    {
        var kind = PartKind.Find(name)!;
        Part Of(string id, double first) => new()
        {
            Id = id, Place = RandomParts.Nowhere, Kind = kind, Name = id,
            Sizes = kind.Deciding.Select((a, i) => (a, Size: SizeName.Find(a)!.Measures is { } d ? RandomParts.Measured(i == 0 ? (decimal)first : 20, 0, d) : new Size("none", null)))
                .ToDictionary(s => s.a, s => s.Size),
        };
        var book = new SizeBook(RandomParts.Library(Of("one", one), Of("other", other)));
        Assert.Equal(["other"], book.SameAs("one"));
        Assert.Equal(["one"], book.SameAs("other"));
    }

    [Fact]
    public void Which_of_two_sizes_comes_first_changes_nothing() =>
        Pairs.Sample(p => Assert.Equal(p.Compare(p.One, p.Other), p.Compare(p.Other, p.One)), iter: 20_000);

    [Fact]
    public void More_doubt_never_turns_agreement_into_a_difference()
    {
        var widened = 0;
        Gen.Select(Pairs, Gen.Decimal[0, 5]).Sample((p, more) =>
        {
            if (p.One.Quantity is not { } quantity) return;
            var (before, after) = (p.Compare(p.One, p.Other), p.Compare(RandomParts.Measured(quantity.Value, quantity.Uncertainty + more, quantity.Dimension), p.Other));
            Assert.False(before == Agreement.Agrees && after == Agreement.Differs);
            if (before != after) Interlocked.Increment(ref widened);
        }, iter: 20_000);
        Assert.True(widened > 100, $"only {widened} came to agree");
    }

    [Fact]
    public void What_is_not_known_agrees_with_nothing_not_even_with_itself() => Pairs.Sample(p =>
    {
        Assert.Equal(Agreement.Unknown, p.Compare(null, p.Other));
        Assert.Equal(Agreement.Unknown, p.Compare(p.One, null));
        Assert.Equal(Agreement.Unknown, p.Compare(null, null));
        Assert.NotEqual(Agreement.Unknown, p.Compare(p.One, p.Other));
    }, iter: 2000);

    private sealed record Pair(PartKind Kind, string Attribute, Size One, Size Other)
    {
        internal Agreement Compare(Size? one, Size? other) => SizeBook.Compare(Kind, Attribute, Known(one), Known(other)).Agreement;

        private static KnownSize? Known(Size? size) => size is null ? null : new KnownSize(size, SizeOrigin.Written);
    }

    private static Gen<Pair> Pairs { get; } =
        from kind in RandomParts.Kinds.Where(k => k.Deciding.Count > 0)
        from attribute in RandomParts.OneOf(kind.Deciding)
        from centre in RandomParts.OneOf(RandomParts.Centres)
        from one in RandomParts.One(kind, attribute, centre)
        from other in RandomParts.One(kind, attribute, centre)
        select new Pair(kind, attribute, one, other);

    private static bool AgreeInAll(Part one, Part other) => one.Kind.Deciding.All(a =>
        one.Sizes.ContainsKey(a) && other.Sizes.ContainsKey(a) && new Pair(one.Kind, a, one.Sizes[a], other.Sizes[a]) is var p && p.Compare(p.One, p.Other) == Agreement.Agrees);
}

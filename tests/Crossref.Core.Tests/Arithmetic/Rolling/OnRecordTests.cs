using Crossref.Core.Arithmetic;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Arithmetic.Rolling;

/// <summary>Which places of a library turn, and how far around they are.</summary>
public class OnRecordTests
{
    private static readonly Place Here = new("x.yaml", 1, 1);

    [Fact]
    public void A_diameter_on_record_goes_before_the_sizes_of_parts() =>
        Assert.Equal((30 * Math.PI, "30 mm across, on record"), Only(Position("roller", ["a"], 30), Part("a", "roller", "outside", 31)));

    [Fact]
    public void A_diameter_serves_for_every_kind() => Assert.Equal(30 * Math.PI, Only(Position("other", [], 30)).Around);

    [Fact]
    public void Without_one_the_parts_that_the_list_names_decide()
    {
        Assert.Equal((40 * Math.PI, "40 mm across, by a"), Only(Position("roller", ["a"]), Part("a", "roller", "outside", 40)));
        Assert.Equal((312d, "312 mm around, by a"), Only(Position("belt", ["a"]), Part("a", "belt", "circumference", 312)));
    }

    [Fact]
    public void Several_listed_parts_leave_everything_between_them_open()
    {
        var place = Assert.Single(Record(Position("belt", ["a", "b"]), Part("a", "belt", "circumference", 312), Part("b", "belt", "circumference", 318)).Turning);
        Assert.Equal(new Interval(312, 318), place.Around);
        Assert.Equal("312 to 318 mm around, by a or b", place.Because);
    }

    [Fact]
    public void A_listed_part_of_unknown_size_leaves_the_place_unknown() =>
        Assert.Empty(Record(Position("roller", ["a", "b"]), Part("a", "roller", "outside", 40), Part("b", "roller", "length", 40)).Turning);

    [Fact]
    public void Nothing_listed_leaves_the_place_unknown() => Assert.Empty(Record(Position("roller", [])).Turning);

    [Fact]
    public void A_kind_that_does_not_roll_needs_a_diameter() => Assert.Empty(Record(Position("bearing", ["a"]), Part("a", "bearing", "outside", 28)).Turning);

    [Fact]
    public void Machines_and_families_may_be_asked_for_by_id()
    {
        var machine = new Machine { Id = "press-1", Place = Here, Name = "Old one", Family = new Ref("fam", Here) };
        var sold = machine with { Id = "press-0", Retired = true };
        Assert.Equal([new("fam", "Family", "fam"), new("press-1", "Old one", "fam")], Record(Position("roller", []), machine, sold).Machines);
    }

    private static (double Around, string Because) Only(Position position, params IRecord[] records)
    {
        var place = Assert.Single(Record(position, records).Turning);
        Assert.Equal(("fam/asm/pos", "Place, Family", "fam"), (place.Position, place.Name, place.Family));
        Assert.Equal(0, place.Around.HalfWidth);
        return (place.Around.Middle, place.Because);
    }

    private static OnRecord Record(Position position, params IRecord[] records)
    {
        var assembly = new Assembly { Id = "asm", Family = "fam", Name = "Assembly", Place = Here, Positions = [position] };
        var family = new Family { Id = "fam", Place = Here, Name = "Family", Maker = "Tarrock", Assemblies = [assembly] };
        return OnRecord.Of(new Library(new LibraryRecord { Id = "lib", Place = Here, Title = "Library" }, [family, .. records]));
    }

    private static Position Position(string kind, string[] listed, decimal? diameter = null) => new()
    {
        Id = "pos", Family = "fam", Assembly = "asm", Place = Here, Name = "Place", Kind = PartKind.Find(kind)!,
        Listed = [.. listed.Select(p => new Listing(new Ref(p, Here), Condition.None))],
        Diameter = diameter is { } across ? new Quantity(across, 0, Dimension.Length) : null,
    };

    private static Part Part(string id, string kind, string size, decimal value) => new()
    {
        Id = id, Place = Here, Kind = PartKind.Find(kind)!, Name = id,
        Sizes = new Dictionary<string, Size> { [size] = new("as written", new Quantity(value, 0, Dimension.Length)) },
    };
}

using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>What stands and hangs in the shop: machines, units, bags, orders.</summary>
internal static class StockMapper
{
    internal static Machine Machine(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Name = f.Text("name"),
        Family = f.RequiredRef("family"),
        Model = f.Text("model"),
        Serial = f.Text("serial"),
        Mains = f.Volts("mains"),
        Readings =
        [
            .. f.Maps("readings").Where(r => r.Count() is not null)
                .Select(r => new Core.Records.Reading(r.Date("date"), r.Count()!.Value, r.Text("counter"), r.Yes("reset"), r.Place)),
        ],
        Note = f.Text("note"),
    };

    internal static Unit Unit(string id, Fields f, AddressBook addresses)
    {
        var (family, assembly) = (f.RequiredRef("family"), f.RequiredRef("assembly"));
        var knownFamily = addresses.Knows(family.Id) ? family.Id : null;
        var local = addresses.Knows(family.Id, assembly.Id) ? assembly.Id : null;
        return new Unit
        {
            Id = id,
            Place = f.Place,
            Retired = f.Yes("retired"),
            Family = family,
            Assembly = assembly.Id.Length == 0 ? assembly : AddressBook.Assembly(assembly, knownFamily),
            Machine = f.Ref("in", "rack"),
            Missing = [.. f.Refs("missing").Select(r => AddressBook.Position(r, knownFamily, local))],
            BackInService = f.Yes("back-in-service"),
            Bin = f.Text("bin"),
            Note = f.Text("note"),
        };
    }

    internal static Bag Bag(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Part = f.RequiredRef("part"),
        Quantity = f.Whole("quantity", 1),
        Grade = f.Word<Grade>("grade") ?? Grade.Sample,
        Bin = f.Text("bin"),
        From = f.Ref("from"),
        Position = f.Ref("position"),
        Counter = f.Count(),
        Number = f.Text("number"),
        Date = f.Date("date"),
        TestedBy = f.Text("tested-by"),
        Defect = f.Text("defect"),
        Note = f.Text("note"),
    };

    internal static Order Order(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Part = f.RequiredRef("part"),
        Quantity = f.Whole("quantity", 1),
        Date = f.Date("date"),
        Expected = f.Date("expected"),
        For = f.Ref("for"),
        Received = f.MaybeDate("received"),
        Note = f.Text("note"),
    };
}

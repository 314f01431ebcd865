using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>Families with their assemblies and positions.</summary>
internal static class FamilyMapper
{
    internal static Family Map(string id, Fields f) => new()
    {
        Id = id,
        Place = f.Place,
        Retired = f.Yes("retired"),
        Name = f.TextOr("name", id),
        Maker = f.TextOr("maker", ""),
        Models = [.. f.Maps("models").Where(m => m.Text("model") is not null).Select(m => new Model(m.Text("model")!, m.Volts("mains")))],
        Assemblies = [.. f.Maps("assemblies").Where(a => a.Text("assembly") is not null).Select(a => Assembly(id, a))],
        Note = f.Text("note"),
    };

    private static Assembly Assembly(string family, Fields f) => new()
    {
        Id = f.Text("assembly")!,
        Family = family,
        Place = f.Place,
        Name = f.TextOr("name", f.Text("assembly")!),
        Cool = f.Text("cool") is { } cool && Shapes.Scalars.TryWait(cool, out var wait) ? wait : null,
        Cautions = [.. f.Texts("cautions").Select(Hazard.Of)],
        Tools = f.Texts("tools"),
        Positions = [.. f.Maps("positions").Where(p => p.Text("position") is not null).Select(p => Position(family, f.Text("assembly")!, p))],
        Note = f.Text("note"),
    };

    private static Position Position(string family, string assembly, Fields f) => new()
    {
        Id = f.Text("position")!,
        Family = family,
        Assembly = assembly,
        Place = f.Place,
        Name = f.TextOr("name", f.Text("position")!),
        Kind = PartKind.Find(f.TextOr("kind", "")) ?? PartKind.Other,
        Role = f.Text("role"),
        Quantity = f.Whole("quantity", 1),
        Listed = [.. f.Maps("listed").Where(l => l.Text("part") is not null).Select(l => new Listing(l.RequiredRef("part"), l.OnlyIf))],
        Source = f.Ref("source"),
        Locator = f.Text("locator"),
        Orientation = f.TextMap("orientation"),
        DamagesNext = [.. f.Refs("damages-next").Select(r => AddressBook.Position(r, family, assembly))],
        BreaksWhenOpened = [.. f.Refs("breaks-when-opened").Select(r => AddressBook.Position(r, family, assembly))],
        Diameter = f.Quantity("diameter", Dimension.Length),
        Safety = f.Yes("safety"),
        Pictures = f.Pictures,
        Note = f.Text("note"),
    };
}

using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>Repairs, with the addresses of the positions they name.</summary>
internal sealed class RepairMapper(AddressBook addresses, DiagnosticLog log)
{
    internal Repair Map(string id, Fields f)
    {
        var (machine, unit) = (f.Ref("machine"), f.Ref("unit"));
        var family = addresses.FamilyOf(machine, unit);
        var written = f.Ref("assembly");
        var assembly = written?.Id ?? (unit is { } u ? addresses.AssemblyOf(u) : null);

        // A unit of which nothing is known, or an assembly that was refused, is one mistake already.
        var mustSay = machine is not null && !f.Has("assembly");
        var local = assembly?.Split('/')[^1];
        if (family is not null && local is not null && !addresses.Knows(family, local)) local = null;
        Ref Position(Fields line)
        {
            var position = line.RequiredRef("position");
            if (assembly is null && mustSay && position.Id.Length > 0 && !position.Id.Contains('/', StringComparison.Ordinal))
            {
                // Every line that needs it lacks the same one key.
                mustSay = false;
                log.Add(ShapeCodes.NoAssembly, position.Place, $"'{position.Id}' does not say in which assembly", $"write assembly/{position.Id}, or add assembly: to the repair");
            }
            return AddressBook.Position(position, family, local);
        }
        return new Repair
        {
            Id = id,
            Place = f.Place,
            Retired = f.Yes("retired"),
            Machine = machine,
            Unit = unit,
            Date = f.Date("date"),
            By = f.Text("by"),
            Counter = f.Count(),
            Symptom = f.Ref("symptom"),
            Assembly = written is { } a ? AddressBook.Assembly(a, family)
                : assembly is not null ? AddressBook.Assembly(new Ref(assembly, unit!.Value.Place), family) : null,
            Found = [.. f.Maps("found").Select(l => new Finding(Position(l), l.TextOr("condition", ""), l.Text("note")))],
            Removed = [.. f.Maps("removed").Select(l => new Removal(Position(l), l.RequiredRef("part"), l.Ref("to", "scrap"), l.Text("condition"), l.Whole("quantity")))],
            Fitted =
            [
                .. f.Maps("fitted").Select(l => new Fitting(
                    Position(l), l.RequiredRef("part"), l.Ref("from", "new"), l.TextMap("orientation"), l.Text("change"), l.Whole("quantity"), l.Place)),
            ],
            Swapped = f.Map("swapped") is { } s
                ? new Swap(s.Ref("assembly") is { } swapped ? AddressBook.Assembly(swapped, family) : s.RequiredRef("assembly"), s.Ref("out"), s.Ref("in"))
                : null,
            Outcome = f.Word<Outcome>("outcome"),
            NeighboursDamaged = f.NeighboursDamaged,
            Pictures = f.Pictures,
            Note = f.Text("note"),
        };
    }
}

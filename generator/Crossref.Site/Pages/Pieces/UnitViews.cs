using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Individual assemblies, and what the idle ones are owed.</summary>
internal sealed class UnitViews(Desk desk, PageLinks links)
{
    internal UnitView Of(Unit unit)
    {
        var machine = House.MachineOf(desk.Library, unit);
        return new UnitView
        {
            Id = unit.Id,
            Anchor = PageMap.Anchor(unit.Id),
            Unit = links.Record(unit.Id),
            Assembly = links.Assembly(unit.Assembly.Id),
            Family = links.Family(unit.Family.Id),
            Machine = machine is null ? null : links.Machine(machine),
            Where = machine is null ? "idle" : "in a machine",
            Bin = unit.Bin,
            BackInService = unit.BackInService,
            Owed = [.. Owed().Where(o => o.Unit.Text == unit.Id)],
            Missing = [.. unit.Missing.Select(m => links.Position(m.Id))],
            Repairs = [.. desk.Index.RepairsUsing(unit.Id).Select(r => links.Record(r.Id))],
            Note = unit.Note,
        };
    }

    /// <summary>Everything that idle units are owed.</summary>
    internal IEnumerable<OwedLine> Owed() => desk.Fits.House.Owed.Select(o => new OwedLine(
        links.Record(o.Unit), links.Position(o.Position), o.Part is { } part ? links.Part(part) : null,
        o.TakenBy is { } repair ? links.Record(repair) : null, o.Order is { } order ? links.Record(order) : null, Arrives(o)));

    private string Arrives(Owed owed) => owed.Order is { } id && desk.Library.Orders.TryGetValue(id, out var order)
        ? order.Received is { } came ? $"came {came}, not fitted yet" : order.Expected.IsUnknown ? "ordered, no date" : $"expected {order.Expected}"
        : "nothing is ordered";
}

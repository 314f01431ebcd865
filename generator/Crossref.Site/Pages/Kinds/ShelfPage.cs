using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>The shelf: bags by bin, units and what the idle ones are owed, orders.</summary>
internal sealed class ShelfPage(Desk desk)
{
    internal IEnumerable<Sheet> All()
    {
        var path = PageMap.Overview("shelf");
        var links = desk.LinksFrom(path);
        yield return new Sheet(path, "shelf.html", "Shelf", "The shelf", Crumbs.Of(links), View(links)) { Reference = "shelf" };
    }

    private ShelfView View(PageLinks links)
    {
        var parts = new CandidateViews(desk, links);
        var bags = RecordIndex.Ours(desk.Library.Bags.Values).OrderBy(b => b.Bin is null).ThenBy(b => b.Bin, BinOrder.Instance)
            .Select(b => Row(b, parts, links)).ToList();
        var units = RecordIndex.Ours(desk.Library.Units.Values).ToLookup(u => House.MachineOf(desk.Library, u) is null);
        var unitViews = new UnitViews(desk, links);
        var orders = RecordIndex.Ours(desk.Library.Orders.Values).ToLookup(o => o.Received is null);
        return new ShelfView
        {
            Bags = [.. bags.Where(b => b.Left > 0)],
            Empty = [.. bags.Where(b => b.Left <= 0)],
            Idle = [.. units[true].Select(unitViews.Of)],
            Running = [.. units[false].Select(unitViews.Of)],
            Coming = [.. orders[true].OrderBy(o => o.Expected).ThenBy(o => o.Id, StringComparer.Ordinal).Select(o => Row(o, parts, links))],
            Elsewhere = [.. Elsewhere(parts, links)],
            Came = [.. orders[false].OrderByDescending(o => o.Received).ThenBy(o => o.Id, StringComparer.Ordinal).Select(o => Row(o, parts, links))],
        };
    }

    // What another shop had when its records were copied. It may be gone, and nobody counts on it here.
    private IEnumerable<ElsewhereRow> Elsewhere(CandidateViews parts, PageLinks links)
    {
        foreach (var bag in RecordIndex.Sorted(desk.Library.Bags.Values).Where(Owner.IsElsewhere))
            yield return new ElsewhereRow(
                PageMap.Anchor(bag.Id), desk.Library.ShopName(Owner.Of(bag.Id)!), Phrase.Of($"{bag.Quantity} × ", links.Part(bag.Part.Id)),
                parts.Part(bag.Part.Id).Name, $"bag {Owner.Local(bag.Id)}, {CandidateViews.GradeText(bag.Grade)}, bagged {bag.Date}");
        foreach (var unit in RecordIndex.Sorted(desk.Library.Units.Values).Where(u => Owner.IsElsewhere(u) && House.MachineOf(desk.Library, u) is null))
            yield return new ElsewhereRow(
                PageMap.Anchor(unit.Id), desk.Library.ShopName(Owner.Of(unit.Id)!), Phrase.Of(links.Record(unit.Assembly.Id)), links.Family(unit.Family.Id).Text, $"idle unit {Owner.Local(unit.Id)}");
    }

    private BagRow Row(Bag bag, CandidateViews parts, PageLinks links) => new()
    {
        Anchor = PageMap.Anchor(bag.Id),
        Id = bag.Id,
        Part = parts.Part(bag.Part.Id),
        Left = desk.Fits.House.Left(bag.Id),
        Bagged = bag.Quantity,
        Grade = CandidateViews.GradeText(bag.Grade),
        Usable = CandidateViews.IsUsable(bag.Grade),
        Bin = bag.Bin ?? "no bin",
        Number = bag.Number,
        From = Phrase.Of(
            bag.From is { } from ? links.Record(from.Id) : "not on record",
            bag.Position is { } position ? Phrase.Of(", ", links.Position(position.Id)) : null,
            bag.Counter is { } counter ? ", at " + counter : null),
        Date = bag.Date.ToString(),
        TestedBy = bag.TestedBy,
        Defect = bag.Defect,
        Repairs = [.. desk.Index.RepairsUsing(bag.Id).Select(r => links.Record(r.Id))],
        Note = bag.Note,
    };

    private OrderRow Row(Order order, CandidateViews parts, PageLinks links) => new()
    {
        Anchor = PageMap.Anchor(order.Id),
        Id = order.Id,
        Part = parts.Part(order.Part.Id),
        Quantity = order.Quantity,
        Left = desk.Fits.House.Left(order.Id),
        Date = order.Date.ToString(),
        Expected = order.Expected.IsUnknown ? "no date" : order.Expected.ToString(),
        Received = order.Received?.ToString() ?? "",
        Late = order.Received is null && order.Expected.Earliest < desk.Options.Date,
        For = order.For is { } target ? links.Record(target.Id) : null,
        Note = order.Note,
    };
}

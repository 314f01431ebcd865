using Crossref.Core.Records;

namespace Crossref.Core.Interchange;

/// <summary>What is in this shop's house: bags and received orders less what repairs took, and what idle units still hold.</summary>
public sealed class House
{
    private readonly Library _library;
    private readonly Dictionary<string, List<InHouse>> _byPart = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _left = new(StringComparer.Ordinal);

    /// <summary>Counts a library's bags, orders and units.</summary>
    public House(Library library)
    {
        _library = library;
        var repairs = library.Repairs.Values.Where(r => !r.Retired && !Owner.IsElsewhere(r)).OrderBy(r => r.Date).ThenBy(r => r.Id, StringComparer.Ordinal).ToList();
        var taken = Taken(library);
        foreach (var bag in Ordered(library.Bags.Values))
        {
            _left[bag.Id] = bag.Quantity - taken.GetValueOrDefault(bag.Id);
            Add(bag.Part.Id, new InHouse(RecordType.Bag, bag.Id, _left[bag.Id], bag.Grade, bag.Bin));
        }
        foreach (var order in Ordered(library.Orders.Values).Where(o => o.Received is not null))
        {
            _left[order.Id] = order.Quantity - taken.GetValueOrDefault(order.Id);
            Add(order.Part.Id, new InHouse(RecordType.Order, order.Id, _left[order.Id], Grade.NewSealed, null));
        }
        var owed = new List<Owed>();
        foreach (var unit in Ordered(library.Units.Values)) ReadUnit(unit, repairs, owed);
        Owed = owed;
    }

    /// <summary>What idle units are owed before they run again.</summary>
    public IReadOnlyList<Owed> Owed { get; }

    /// <summary>Where pieces of a part lie: bags first, then orders that came, then idle units.</summary>
    public IReadOnlyList<InHouse> Of(string part) => _byPart.GetValueOrDefault(part) ?? [];

    /// <summary>How many pieces are left in a bag or received order; below zero when repairs took more than there were.</summary>
    public int Left(string id) => _left.GetValueOrDefault(id);

    /// <summary>The machine a unit sits in, as the latest swap or else its record says; null when it is idle.</summary>
    public static string? MachineOf(Library library, Unit unit)
    {
        var swap = library.Repairs.Values
            .Where(r => !r.Retired && Owner.Of(r.Id) == Owner.Of(unit.Id) && (r.Swapped?.In?.Id == unit.Id || r.Swapped?.Out?.Id == unit.Id))
            .OrderBy(r => r.Date).ThenBy(r => r.Id, StringComparer.Ordinal).LastOrDefault();
        return swap is null ? unit.Machine?.Id : swap.Swapped!.In?.Id == unit.Id ? swap.Machine?.Id : null;
    }

    /// <summary>How many pieces repairs took from each bag, unit and order.</summary>
    public static IReadOnlyDictionary<string, int> Taken(Library library) =>
        library.Repairs.Values.Where(r => !r.Retired && !Owner.IsElsewhere(r)).SelectMany(r => r.Fitted).Where(f => f.From is not null)
            .GroupBy(f => f.From!.Value.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Sum(f => f.Quantity ?? library.Positions.GetValueOrDefault(f.Position.Id)?.Quantity ?? 1), StringComparer.Ordinal);

    private static IEnumerable<T> Ordered<T>(IEnumerable<T> records) where T : IRecord =>
        records.Where(r => !r.Retired && !Owner.IsElsewhere(r)).OrderBy(r => r.Id, StringComparer.Ordinal);

    private void Add(string part, InHouse item)
    {
        if (item.Quantity <= 0) return;
        if (!_byPart.TryGetValue(part, out var list)) _byPart[part] = list = [];
        // A unit may hold the same part at several positions; it is one place to walk to.
        var same = list.FindIndex(i => i.Id == item.Id);
        if (same < 0) list.Add(item);
        else list[same] = item with { Quantity = list[same].Quantity + item.Quantity };
    }

    private void ReadUnit(Unit unit, List<Repair> repairs, List<Owed> owed)
    {
        if (_library.Assemblies.GetValueOrDefault(unit.Assembly.Id) is not { } assembly) return;
        var empty = new Dictionary<string, (string? Repair, string? Part)>(StringComparer.Ordinal);
        // A unit has no model and no serial. Where the list names several parts, or one for some machines only, nobody
        // knows which it holds until a repair says so.
        var holds = assembly.Positions.Where(p => p.Listed is [{ OnlyIf.IsNone: true }]).ToDictionary(p => p.Address, p => p.Listed[0].Part.Id, StringComparer.Ordinal);
        foreach (var missing in unit.Missing) empty[missing.Id] = (null, null);
        foreach (var repair in repairs)
        {
            foreach (var fitting in repair.Fitted)
            {
                if (repair.Unit?.Id == unit.Id)
                {
                    holds[fitting.Position.Id] = fitting.Part.Id;
                    empty.Remove(fitting.Position.Id);
                }
                else if (fitting.From?.Id == unit.Id && GaveFrom(assembly, holds, fitting) is { } position) empty[position] = (repair.Id, fitting.Part.Id);
            }
            foreach (var removal in repair.Removed.Where(r => r.To?.Id == unit.Id))
            {
                holds[removal.Position.Id] = removal.Part.Id;
                empty.Remove(removal.Position.Id);
            }
        }
        if (MachineOf(_library, unit) is not null) return;
        foreach (var position in assembly.Positions)
        {
            if (!empty.TryGetValue(position.Address, out var taken))
            {
                if (holds.TryGetValue(position.Address, out var part)) Add(part, new InHouse(RecordType.Unit, unit.Id, position.Quantity, null, unit.Bin));
            }
            else if (unit.BackInService)
            {
                var order = OrderFor(unit, position);
                var part = order?.Part.Id ?? taken.Part ?? holds.GetValueOrDefault(position.Address);
                owed.Add(new Owed(unit.Id, position.Address, part, taken.Repair, order?.Id));
            }
        }
    }

    // The same position when the unit is of the same assembly, else the place where it holds, or may hold, that part.
    private static string? GaveFrom(Assembly assembly, Dictionary<string, string> holds, Fitting fitting) =>
        assembly.Positions.Any(p => p.Address == fitting.Position.Id)
            ? fitting.Position.Id
            : assembly.Positions.FirstOrDefault(p => holds.TryGetValue(p.Address, out var part) ? part == fitting.Part.Id : Names(p, fitting.Part.Id))?.Address;

    private Order? OrderFor(Unit unit, Position position) =>
        Ordered(_library.Orders.Values).FirstOrDefault(o => o.For?.Id == unit.Id && Names(position, o.Part.Id));

    private static bool Names(Position position, string part) => position.Listed.Any(l => l.Part.Id == part);
}

namespace Crossref.Core.Records;

/// <summary>Every record of a content folder, read and frozen. Any thread may read it.</summary>
public sealed class Library
{
    private readonly Dictionary<string, IRecord> _records;
    private readonly HashSet<string> _safetyPositions;

    /// <summary>Freezes the records. Of several with one id the first counts; the checks report the others.</summary>
    public Library(LibraryRecord card, IEnumerable<IRecord> records)
    {
        Card = card;
        _records = new Dictionary<string, IRecord>(StringComparer.Ordinal) { [card.Id] = card };
        Repeated = [.. records.Where(record => !_records.TryAdd(record.Id, record))];
        Others = Of<LibraryRecord>().Values.Where(Owner.IsElsewhere).ToDictionary(c => Owner.Of(c.Id)!, StringComparer.Ordinal);
        Families = Of<Family>();
        Parts = Of<Part>();
        Sources = Of<Source>();
        Claims = Of<Claim>();
        Repairs = Of<Repair>();
        Machines = Of<Machine>();
        Units = Of<Unit>();
        Bags = Of<Bag>();
        Orders = Of<Order>();
        Symptoms = Of<Symptom>();
        Questions = Of<Question>();
        Notes = Of<Note>();
        Assemblies = Families.Values.Where(f => !f.Retired).SelectMany(f => f.Assemblies)
            .GroupBy(a => a.Address, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        Positions = Assemblies.Values.SelectMany(a => a.Positions)
            .GroupBy(p => p.Address, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        _safetyPositions = Positions.Values
            .Where(p => p.Safety || p.Kind.Safety || p.Listed.Any(l => Parts.GetValueOrDefault(l.Part.Id) is { IsSafety: true }))
            .Select(p => p.Address).ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The library's own document.</summary>
    public LibraryRecord Card { get; }
    /// <summary>The cards of other libraries whose records are here, by the library's own id.</summary>
    public IReadOnlyDictionary<string, LibraryRecord> Others { get; }
    /// <summary>Families by id.</summary>
    public IReadOnlyDictionary<string, Family> Families { get; }
    /// <summary>Parts by id.</summary>
    public IReadOnlyDictionary<string, Part> Parts { get; }
    /// <summary>Sources by id.</summary>
    public IReadOnlyDictionary<string, Source> Sources { get; }
    /// <summary>Claims by id.</summary>
    public IReadOnlyDictionary<string, Claim> Claims { get; }
    /// <summary>Repairs by id.</summary>
    public IReadOnlyDictionary<string, Repair> Repairs { get; }
    /// <summary>Machines by id.</summary>
    public IReadOnlyDictionary<string, Machine> Machines { get; }
    /// <summary>Units by id.</summary>
    public IReadOnlyDictionary<string, Unit> Units { get; }
    /// <summary>Bags by id.</summary>
    public IReadOnlyDictionary<string, Bag> Bags { get; }
    /// <summary>Orders by id.</summary>
    public IReadOnlyDictionary<string, Order> Orders { get; }
    /// <summary>Symptoms by id.</summary>
    public IReadOnlyDictionary<string, Symptom> Symptoms { get; }
    /// <summary>Questions by id.</summary>
    public IReadOnlyDictionary<string, Question> Questions { get; }
    /// <summary>Notes by id.</summary>
    public IReadOnlyDictionary<string, Note> Notes { get; }
    /// <summary>Assemblies of the families in use, by address.</summary>
    public IReadOnlyDictionary<string, Assembly> Assemblies { get; }
    /// <summary>Positions of the families in use, by address.</summary>
    public IReadOnlyDictionary<string, Position> Positions { get; }

    /// <summary>Every record by id.</summary>
    public IReadOnlyDictionary<string, IRecord> Records => _records;

    /// <summary>Records whose id another one had before them; nothing looks at them but the checks.</summary>
    public IReadOnlyList<IRecord> Repeated { get; }

    /// <summary>Whether this is a safety position: by its kind, because it is marked, or because a part listed there is a safety part.</summary>
    public bool IsSafety(Position position) => _safetyPositions.Contains(position.Address);

    /// <summary>
    /// Whether a source or repair of that id documents, so that a statement in it is the maker's or a standard's own. One that
    /// came from another library documents nothing here until this library has confirmed it.
    /// </summary>
    public bool Documents(Ref? source) =>
        source is { } s && Sources.GetValueOrDefault(s.Id) is { Documents: true, Retired: false } found &&
        (found.From is null || Card.Confirmed.Any(c => c.Id == s.Id));

    /// <summary>The shop whose record it is, by the record's id.</summary>
    public string ShopOf(string id) => Owner.Of(id) ?? Card.Id;

    /// <summary>What to call a machine: its name or id, and whose it is when it is not this shop's.</summary>
    public string MachineName(string id)
    {
        var name = Machines.GetValueOrDefault(id)?.Name ?? Owner.Local(id);
        return Owner.Of(id) is { } shop ? $"{name} at {ShopName(shop)}" : name;
    }

    /// <summary>What to call a shop.</summary>
    public string ShopName(string shop) => shop == Card.Id ? Card.Title : Others.GetValueOrDefault(shop)?.Title ?? shop;

    /// <summary>The model of a machine; null when it is not known.</summary>
    public Model? ModelOf(Machine machine) =>
        Families.GetValueOrDefault(machine.Family.Id)?.Models.FirstOrDefault(m => m.Name == machine.Model);

    /// <summary>This shop's machines of a family that are in use, in order of id.</summary>
    public IEnumerable<Machine> MachinesOf(string family) =>
        Machines.Values.Where(m => !m.Retired && !Owner.IsElsewhere(m) && m.Family.Id == family).OrderBy(m => m.Id, StringComparer.Ordinal);

    private Dictionary<string, T> Of<T>() where T : IRecord =>
        _records.Values.OfType<T>().ToDictionary(r => r.Id, StringComparer.Ordinal);
}

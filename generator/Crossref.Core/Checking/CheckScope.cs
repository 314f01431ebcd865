using Crossref.Core.Evidence;
using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>The library as the rules see it: with retired families' positions, without records that were only half read.</summary>
internal sealed class CheckScope
{
    // Comparing with every id of a large library takes time; a folder with this many dead references has other troubles.
    private const int MostSuggestions = 50;

    private readonly CheckContext _context;
    private readonly Dictionary<string, Position> _positions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Assembly> _assemblies = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Fitting> _made = new(StringComparer.Ordinal);
    private readonly Withdrawals _withdrawals;
    private readonly HashSet<string> _repeated;
    private readonly HashSet<Ref> _dead;
    private int _suggestions;

    internal CheckScope(Library library, CheckContext context)
    {
        Library = library;
        _context = context;
        _withdrawals = new Withdrawals(library);
        _repeated = library.Repeated.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var assembly in library.Families.Values.SelectMany(f => f.Assemblies))
        {
            _assemblies.TryAdd(assembly.Address, assembly);
            foreach (var position in assembly.Positions) _positions.TryAdd(position.Address, position);
        }
        foreach (var repair in library.Repairs.Values)
        {
            foreach (var fitting in repair.Fitted) Make(repair, fitting);
        }
        All = [.. library.Records.Values.OrderBy(r => r.Id, StringComparer.Ordinal)];
        References = [.. All.SelectMany(Checking.References.Of).Select(r => (r, FateOf(r)))];
        _dead = [.. References.Where(r => r.Fate is not (Fate.Fine or Fate.Retired)).Select(r => r.Reference.To)];
    }

    internal Library Library { get; }

    internal DateOnly Today => _context.Today;

    /// <summary>Whether a date is after today. It was reported, and what it would be set right, nobody knows.</summary>
    internal bool IsFuture(PartialDate date) => date.Earliest > Today;

    /// <summary>Every record, by id.</summary>
    internal IReadOnlyList<IRecord> All { get; }

    /// <summary>Every reference of every record, also of half-read ones, and what became of it.</summary>
    internal IReadOnlyList<(Reference Reference, Fate Fate)> References { get; }

    internal IReadOnlyDictionary<string, Position> Positions => _positions;

    internal IReadOnlyDictionary<string, Assembly> Assemblies => _assemblies;

    // Text was lost, so that something may exist that nobody sees.
    private bool HasLost => _context.Lost.Count > 0 || _context.Nameless != Target.None;

    /// <summary>Whether every record of a type was wholly read.</summary>
    internal bool HasAll<T>() where T : IRecord => !HasLost && All.OfType<T>().All(r => IsWhole(r.Id));

    /// <summary>Whether a reference leads nowhere. That was reported; what was meant instead, nobody knows.</summary>
    internal bool IsDead(Ref? reference) => reference is { } r && _dead.Contains(r);

    /// <summary>The wholly read, unretired records of a type, by id.</summary>
    internal IEnumerable<T> Whole<T>() where T : IRecord => All.OfType<T>().Where(r => IsWhole(r.Id) && !r.Retired);

    /// <summary>The wholly read claims that nobody took back; what was wrong with the others does no harm any more.</summary>
    internal IEnumerable<Claim> Standing => Whole<Claim>().Where(c => _withdrawals.Stands(c.Id));

    /// <summary>A wholly read record of a type; null when there is none of that id.</summary>
    internal T? Find<T>(Ref? reference) where T : class, IRecord =>
        reference is { } r && IsWhole(r.Id) ? Library.Records.GetValueOrDefault(r.Id) as T : null;

    /// <summary>A position whose family was wholly read; null when there is none of that address.</summary>
    internal Position? Position(Ref? reference) =>
        reference is { } r && _positions.GetValueOrDefault(r.Id) is { } p && IsWhole(p.Family) ? p : null;

    /// <summary>The fitting behind a claim that a repair makes, under either of its ids; null when there is none.</summary>
    internal Fitting? Made(string claim) => _made.GetValueOrDefault(claim);

    /// <summary>Where a key of a record is written.</summary>
    internal Place PlaceOf(IRecord record, string key) => _context.Keys.GetValueOrDefault((record.Id, key), record.Place);

    /// <summary>"did you mean …?", or what to say when nothing is near.</summary>
    internal string Hint(string word, IEnumerable<string> known, string otherwise) =>
        _suggestions++ < MostSuggestions ? Suggest.Hint(word, known, otherwise) : otherwise;

    private bool IsWhole(string id) => !_context.Incomplete.Contains(id) && !_repeated.Contains(id);

    // A repair's claim is named by the repair and the position as somebody may say it: alone, or with its assembly.
    private void Make(Repair repair, Fitting fitting)
    {
        if (fitting.Position.Id.Split('/') is not [_, .., var assembly, var position]) return;
        _made.TryAdd($"{repair.Id}/{position}", fitting);
        _made.TryAdd($"{repair.Id}/{assembly}/{position}", fitting);
    }

    // Of a fitting whose place is not known nobody can say that it is another one.
    private bool MayBeMade(string id, int slash) =>
        _made.ContainsKey(id) ||
        slash > 0 && Library.Repairs.TryGetValue(id[..slash], out var repair) &&
        (_context.Incomplete.Contains(repair.Id) || repair.Fitted.Any(f => !_positions.ContainsKey(f.Position.Id)));

    private Fate FateOf(Reference reference)
    {
        var id = reference.To.Id;
        if (Library.Records.TryGetValue(id, out var record))
        {
            if (reference.MayBe(Targets.Of(record.Type))) return Live(reference, record);
            return _repeated.Contains(id) ? Fate.Fine : Fate.WrongType;
        }
        var slash = id.IndexOf('/', StringComparison.Ordinal);
        if (_context.Lost.Contains(slash < 0 ? id : id[..slash])) return Fate.Fine;
        if (reference.MayBe(Target.Claim) && MayBeMade(id, slash)) return Fate.Fine;
        // The family is asked of the place itself: where its id has a slash in it by mistake, the address does not say it.
        var (position, assembly) = (_positions.GetValueOrDefault(id), _assemblies.GetValueOrDefault(id));
        if (position is not null && reference.MayBe(Target.Position)) return Live(reference, Library.Families[position.Family]);
        if (assembly is not null && reference.MayBe(Target.Assembly)) return Live(reference, Library.Families[assembly.Family]);
        if (position is not null || assembly is not null) return Fate.WrongType;
        if (reference.MayBe(_context.Nameless)) return Fate.Fine;
        if (reference.Target == Target.Assembly || reference.MayBe(Target.Assembly) && id.Count(c => c == '/') == 1) return Fate.UnknownAssembly;
        return reference.Target == Target.Position || reference.MayBe(Target.Position) && slash >= 0 ? Fate.UnknownPosition : Fate.Missing;
    }

    private static Fate Live(Reference reference, IRecord record) =>
        record.Retired && !reference.From.Retired ? Fate.Retired : Fate.Fine;
}

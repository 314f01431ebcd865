using Crossref.Core.Records;

namespace Crossref.Core.Checking;

/// <summary>The library as the rules see it: with retired families' positions, without records that were only half read.</summary>
internal sealed class CheckScope
{
    private readonly CheckContext _context;
    private readonly Dictionary<string, Position> _positions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Assembly> _assemblies = new(StringComparer.Ordinal);
    private readonly HashSet<string> _repeated;

    internal CheckScope(Library library, CheckContext context)
    {
        Library = library;
        _context = context;
        _repeated = library.Repeated.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var assembly in library.Families.Values.SelectMany(f => f.Assemblies))
        {
            _assemblies.TryAdd(assembly.Address, assembly);
            foreach (var position in assembly.Positions) _positions.TryAdd(position.Address, position);
        }
        All = [.. library.Records.Values.OrderBy(r => r.Id, StringComparer.Ordinal)];
        References = [.. All.SelectMany(Checking.References.Of)];
    }

    internal Library Library { get; }

    internal DateOnly Today => _context.Today;

    /// <summary>Every record, by id.</summary>
    internal IReadOnlyList<IRecord> All { get; }

    /// <summary>Every reference of every record, also of half-read ones.</summary>
    internal IReadOnlyList<Reference> References { get; }

    internal IReadOnlyDictionary<string, Position> Positions => _positions;

    internal IReadOnlyDictionary<string, Assembly> Assemblies => _assemblies;

    /// <summary>Whether text was lost, so that something may exist that nobody sees.</summary>
    internal bool HasLost => _context.Lost.Count > 0;

    /// <summary>The wholly read, unretired records of a type, by id.</summary>
    internal IEnumerable<T> Whole<T>() where T : IRecord => All.OfType<T>().Where(r => IsWhole(r.Id) && !r.Retired);

    internal bool IsWhole(string id) => !_context.Incomplete.Contains(id) && !_repeated.Contains(id);

    /// <summary>A wholly read part; null when there is none of that id.</summary>
    internal Part? Part(Ref? reference) => Find<Part>(reference);

    /// <summary>A wholly read record of a type; null when there is none of that id.</summary>
    internal T? Find<T>(Ref? reference) where T : class, IRecord =>
        reference is { } r && IsWhole(r.Id) ? Library.Records.GetValueOrDefault(r.Id) as T : null;

    /// <summary>A position whose family was wholly read; null when there is none of that address.</summary>
    internal Position? Position(Ref? reference) =>
        reference is { } r && _positions.GetValueOrDefault(r.Id) is { } p && IsWhole(p.Family) ? p : null;

    /// <summary>Whether an id, or the record an address begins with, stands in text that could not be read.</summary>
    internal bool MayBeLost(string id) => _context.Lost.Contains(id) || _context.Lost.Contains(id.Split('/')[0]);

    /// <summary>Where a key of a record is written.</summary>
    internal Place PlaceOf(IRecord record, string key) => _context.Keys.GetValueOrDefault((record.Id, key), record.Place);
}

using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>
/// The facts of a library as they stand for one machine, or for none. Judges each fact once; not for several threads.
/// </summary>
public sealed class Facts
{
    private readonly Library _library;
    private readonly StatementBook _book;
    private readonly Machine? _machine;
    private readonly MachineContext _context;
    private readonly Dictionary<(string, string), Fact> _direct = [];
    private readonly Dictionary<(string, string, string), Fact> _comparisons = [];
    private readonly Dictionary<string, IReadOnlyList<string>> _listed = new(StringComparer.Ordinal);

    /// <summary>Facts for a machine of the library; without one, every condition is unknown.</summary>
    public Facts(Library library, StatementBook book, Machine? machine)
    {
        _library = library;
        _book = book;
        _machine = machine;
        _context = MachineContext.Of(library, machine);
    }

    /// <summary>A part at a position. The machine counts only where the position is of its family.</summary>
    public Fact Direct(string part, Position position)
    {
        var key = (part, position.Address);
        if (_direct.TryGetValue(key, out var fact)) return fact;
        var safety = _library.IsSafety(position) || IsSafety(part);
        return _direct[key] = Judge.Decide(_library, _book.Direct(part, position.Address), ContextAt(position), safety);
    }

    /// <summary>A part in place of another, as far as it is said for a position.</summary>
    public Fact Substitution(string part, string insteadOf, Position position)
    {
        var key = (part, insteadOf, position.Address);
        if (_comparisons.TryGetValue(key, out var fact)) return fact;
        var covering = _book.Comparisons(part, insteadOf).Where(s => Covers(s.Where, position)).ToList();
        var safety = _library.IsSafety(position) || IsSafety(part) || IsSafety(insteadOf);
        return _comparisons[key] = Judge.Decide(_library, covering, ContextAt(position), safety);
    }

    /// <summary>A part in place of another, as it is said for a family or position of that name, or for anywhere (null).</summary>
    public Fact SubstitutionIn(string part, string insteadOf, string? where)
    {
        if (where is not null && _library.Positions.TryGetValue(where, out var position)) return Substitution(part, insteadOf, position);
        var covering = _book.Comparisons(part, insteadOf).Where(s => s.Where is null || s.Where == where).ToList();
        return Judge.Decide(_library, covering, MachineContext.None, IsSafety(part) || IsSafety(insteadOf));
    }

    /// <summary>The parts that the maker's list names for a position, in order of id; those whose condition is false for the machine are left out.</summary>
    public IReadOnlyList<string> Listed(Position position)
    {
        if (_listed.TryGetValue(position.Address, out var listed)) return listed;
        return _listed[position.Address] =
        [
            .. _book.PartsAt(position.Address).Where(part => _book.Direct(part, position.Address)
                .Any(s => s.Kind == StatementKind.Listing && s.HoldsFor(ContextAt(position)) != Truth.False)),
        ];
    }

    private MachineContext ContextAt(Position position) =>
        _machine?.Family.Id == position.Family ? _context : MachineContext.None;

    private bool IsSafety(string part) => _library.Parts.GetValueOrDefault(part) is { IsSafety: true };

    private static bool Covers(string? where, Position position) =>
        where is null || where == position.Family || where == position.Address;
}

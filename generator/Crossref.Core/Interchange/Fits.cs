using Crossref.Core.Evidence;
using Crossref.Core.Records;
using Crossref.Core.Sizes;

namespace Crossref.Core.Interchange;

/// <summary>Answers what fits a position. Keeps what it has judged; use one per thread.</summary>
public sealed class Fits
{
    private readonly Library _library;
    private readonly StatementBook _book;
    private readonly Wording _wording;
    private readonly House _house;
    private readonly Dictionary<string, Facts> _facts = new(StringComparer.Ordinal);

    /// <summary>Reads the statements of a library.</summary>
    public Fits(Library library)
    {
        _library = library;
        _book = new StatementBook(library);
        _wording = new Wording(library);
        _house = new House(library);
        Sizes = new SizeBook(library);
    }

    /// <summary>The library's statements.</summary>
    public StatementBook Book => _book;

    /// <summary>The sizes of the library's parts.</summary>
    public SizeBook Sizes { get; }

    /// <summary>What is in the house.</summary>
    public House House => _house;

    /// <summary>The library's facts for a machine, or for none.</summary>
    public Facts FactsFor(string? machine)
    {
        if (_facts.TryGetValue(machine ?? "", out var facts)) return facts;
        return _facts[machine ?? ""] = new Facts(_library, _book, machine is null ? null : _library.Machines[machine]);
    }

    /// <summary>What fits a position, for a machine of its family or for none.</summary>
    /// <exception cref="KeyNotFoundException">There is no such position or machine.</exception>
    public FitsAnswer At(string position, string? machine = null)
    {
        var place = _library.Positions[position];
        var facts = FactsFor(machine);
        var safety = _library.IsSafety(place);
        var search = new PathSearch(_library, _book, Sizes, facts, place);
        var candidates = search.Run()
            .OrderBy(p => p.IsLead).ThenByDescending(p => p.Weakest).ThenBy(p => p.Length).ThenBy(p => p.Part, StringComparer.Ordinal)
            .Select(path => ToCandidate(path, place));
        var listed = facts.Listed(place);
        var disputed = Refused(FactState.Disputed).ToLookup(r => Sizes.Mismatches(r.Part, listed).Count > 0);
        var mismatched = search.Mismatched.Concat(disputed[true].Select(r => r.Part)).Select(part => Mismatch(part, listed, facts.Direct(part, place)));
        return new FitsAnswer(
            position, machine, safety, [.. candidates], [.. disputed[false]],
            [.. Refused(FactState.RuledOut).Concat(mismatched).OrderBy(r => r.Part, StringComparer.Ordinal)]);

        IEnumerable<Refusal> Refused(FactState state) =>
            _book.PartsAt(position).Select(part => (Part: part, Fact: facts.Direct(part, place)))
                .Where(x => x.Fact.State == state)
                .Select(x => Refuse(x.Part, _wording.Of(x.Fact), "Its sizes rule it out too", listed, x.Fact));
    }

    private Refusal Mismatch(string part, IReadOnlyList<string> listed, Fact fact) =>
        Refuse(part, "", "Does not fit, whatever anyone claims", listed, fact);

    // What was said, and after it the sizes that differ from what is listed.
    private Refusal Refuse(string part, string said, string how, IReadOnlyList<string> listed, Fact fact)
    {
        var sizes = Sizes.Mismatches(part, listed);
        var differ = sizes.Count == 0 ? "" : $"{how}: {_wording.OfMismatch(Sizes, sizes, part, listed)}.";
        return new Refusal(part, $"{said} {differ}".Trim(), StatementsOf(fact)) { Sizes = sizes };
    }

    private static IReadOnlyList<string> StatementsOf(Fact fact) => [.. fact.Negatives.Concat(fact.Positives).Select(s => s.Id)];

    private Candidate ToCandidate(Path path, Position position)
    {
        var assembly = _library.Assemblies[$"{position.Family}/{position.Assembly}"];
        return new Candidate
        {
            Part = path.Part,
            IsLead = path.IsLead,
            Weakest = path.Weakest,
            Accepted = IsAccepted(path),
            Reason = _wording.Of(path),
            Steps = path.Steps,
            Conditions = [.. path.Conditions.Union(path.Shown, StringComparer.Ordinal)],
            Changes = path.Changes,
            Cautions = [.. assembly.Cautions.Select(c => c.Id)],
            InHouse = _house.Of(path.Part),
        };
    }

    // Where safety is concerned only the maker's document will do, and only for a machine of which nothing is unknown.
    private bool IsAccepted(Path path) => !path.IsLead &&
        (path.Safety ? path is { Weakest: Basis.Documented, Conditions.Count: 0 } : path.Weakest >= _library.Card.AcceptFrom);
}

using Crossref.Core.Records;

namespace Crossref.Core.Evidence;

/// <summary>
/// Every statement of a library, filed by the fact it speaks of: listings, claims, the reverse of claims that hold
/// both ways, and what repairs show. Withdrawn and retired ones are left out. Built once; any thread may read it.
/// </summary>
public sealed class StatementBook
{
    private static readonly IReadOnlyList<Statement> None = [];
    private readonly Dictionary<(string Part, string Position), List<Statement>> _direct = [];
    private readonly Dictionary<(string Part, string InsteadOf), List<Statement>> _comparisons = [];
    private readonly Dictionary<string, List<string>> _partsAt = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _positionsOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _substitutesFor = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _substitutedBy = new(StringComparer.Ordinal);

    /// <summary>Files every statement of a library.</summary>
    public StatementBook(Library library)
    {
        Withdrawals = new Withdrawals(library);
        foreach (var position in library.Positions.Values)
            foreach (var listing in position.Listed) AddDirect(library, position.Address, Listed(library, position, listing));
        var basis = new BasisRule(library);
        foreach (var claim in library.Claims.Values.OrderBy(c => c.Id, StringComparer.Ordinal))
        {
            if (claim.Retired || claim.Verdict is null || claim.Basis is null || !Withdrawals.Stands(claim.Id)) continue;
            var statement = Claimed(library, basis, claim);
            if (claim.At is { } at) AddDirect(library, at.Id, statement);
            if (claim.Replaces is not { } other) continue;
            AddComparison(library, other.Id, statement);
            if (claim.BothWays) AddComparison(library, claim.Part.Id, Reversed(statement, other.Id));
        }
        foreach (var (position, statement) in RepairEvidence.Of(library))
            if (Withdrawals.Stands(statement.Id)) AddDirect(library, position, statement);
    }

    /// <summary>Which claims were taken back.</summary>
    public Withdrawals Withdrawals { get; }

    /// <summary>What is said of a part at a position.</summary>
    public IReadOnlyList<Statement> Direct(string part, string position) =>
        _direct.TryGetValue((part, position), out var found) ? found : None;

    /// <summary>What is said, anywhere, of a part in place of another.</summary>
    public IReadOnlyList<Statement> Comparisons(string part, string insteadOf) =>
        _comparisons.TryGetValue((part, insteadOf), out var found) ? found : None;

    /// <summary>Parts of which anything is said at a position, in order of id.</summary>
    public IReadOnlyList<string> PartsAt(string position) => _partsAt.GetValueOrDefault(position) ?? [];

    /// <summary>Positions at which anything is said of a part, in order of address.</summary>
    public IReadOnlyList<string> PositionsOf(string part) => _positionsOf.GetValueOrDefault(part) ?? [];

    /// <summary>Parts of which anything is said in place of a part, in order of id.</summary>
    public IReadOnlyList<string> SubstitutesFor(string part) => _substitutesFor.GetValueOrDefault(part) ?? [];

    /// <summary>Parts in place of which anything is said of a part, in order of id.</summary>
    public IReadOnlyList<string> SubstitutedBy(string part) => _substitutedBy.GetValueOrDefault(part) ?? [];

    private static Statement Listed(Library library, Position position, Listing listing) => new()
    {
        Kind = StatementKind.Listing,
        Id = "listed/" + position.Address,
        Part = listing.Part.Id,
        Verdict = Verdict.Fits,
        Basis = library.Documents(position.Source) ? Basis.Documented : Basis.Told,
        Lowered = library.Documents(position.Source) ? null : "no maker's document is named for the list",
        OnlyIf = listing.OnlyIf,
        Terms = Term.Of(listing.OnlyIf),
        Shop = library.Card.Id,
        Source = position.Source?.Id,
        Locator = position.Locator,
    };

    private static Statement Claimed(Library library, BasisRule rule, Claim claim)
    {
        var (basis, lowered) = rule.Effective(claim);
        return new Statement
        {
            Kind = StatementKind.Claim,
            Id = claim.Id,
            Part = claim.Part.Id,
            Verdict = claim.Verdict!.Value,
            Basis = basis,
            Lowered = lowered,
            Where = claim.Where?.Id,
            OnlyIf = claim.OnlyIf,
            Terms = Term.Of(claim.OnlyIf),
            Change = claim.Change,
            Run = claim.Run,
            NeighboursDamaged = claim.NeighboursDamaged,
            Machine = claim.Machine?.Id,
            Shop = library.ShopOf(claim.Id),
            Source = claim.Source?.Id,
            Locator = claim.Locator,
            By = claim.By,
            Date = claim.Date,
        };
    }

    // Running or seating one part in place of another shows nothing about the other direction but equal sizes.
    private static Statement Reversed(Statement statement, string part) => statement with
    {
        Kind = StatementKind.Reverse,
        Part = part,
        Basis = statement.Basis is Basis.Ran or Basis.Seated ? Basis.Measured : statement.Basis,
        Lowered = statement.Basis is Basis.Ran or Basis.Seated ? "it was tried the other way round" : statement.Lowered,
    };

    private void AddDirect(Library library, string position, Statement statement)
    {
        if (!InUse(library, statement.Part) || !library.Positions.ContainsKey(position)) return;
        File(_direct, (statement.Part, position), statement);
        FileOnce(_partsAt, position, statement.Part);
        FileOnce(_positionsOf, statement.Part, position);
    }

    private void AddComparison(Library library, string insteadOf, Statement statement)
    {
        if (!InUse(library, statement.Part) || !InUse(library, insteadOf)) return;
        File(_comparisons, (statement.Part, insteadOf), statement);
        FileOnce(_substitutesFor, insteadOf, statement.Part);
        FileOnce(_substitutedBy, statement.Part, insteadOf);
    }

    private static bool InUse(Library library, string part) => library.Parts.GetValueOrDefault(part) is { Retired: false };

    private static void File<T>(Dictionary<T, List<Statement>> book, T key, Statement statement) where T : notnull
    {
        if (!book.TryGetValue(key, out var list)) book[key] = list = [];
        list.Add(statement);
    }

    private static void FileOnce(Dictionary<string, List<string>> index, string key, string value)
    {
        if (!index.TryGetValue(key, out var list)) index[key] = list = [];
        var at = list.BinarySearch(value, StringComparer.Ordinal);
        if (at < 0) list.Insert(~at, value);
    }
}

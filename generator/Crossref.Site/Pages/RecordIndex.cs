using Crossref.Core.Records;

namespace Crossref.Site.Pages;

/// <summary>Who speaks of what: references read backwards. Built once; any thread may read it.</summary>
internal sealed class RecordIndex(Library library)
{
    private readonly IReadOnlyList<Claim> _claims = [.. library.Claims.Values.OrderByDescending(c => c.Date).ThenByDescending(c => c.Id, StringComparer.Ordinal)];

    private readonly IReadOnlyList<Repair> _repairs =
        [.. InUse(library.Repairs.Values).OrderByDescending(r => r.Date).ThenByDescending(r => r.Id, StringComparer.Ordinal)];

    private ILookup<string, Claim>? _byPart, _byPosition, _bySource, _byMachine;
    private ILookup<string, Repair>? _repairsByPart, _repairsByPosition, _repairsByAssembly, _repairsByMachine, _repairsBySymptom, _repairsByHolder;
    private ILookup<string, Note>? _notes;
    private ILookup<string, Question>? _questions;
    private ILookup<string, Position>? _positionsBySource, _positionsByRole, _positionsByListed;
    private ILookup<string, Part>? _partsBySource, _kits;
    private ILookup<string, Bag>? _bagsByPart;

    /// <summary>Claims, newest first, withdrawn ones too.</summary>
    internal IReadOnlyList<Claim> Claims => _claims;

    /// <summary>Repairs, newest first.</summary>
    internal IReadOnlyList<Repair> Repairs => _repairs;

    /// <summary>Claims that name a part, on either side.</summary>
    internal IEnumerable<Claim> ClaimsOf(string part) =>
        (_byPart ??= Many(_claims, c => [c.Part.Id, c.Replaces?.Id]))[part];

    internal IEnumerable<Claim> ClaimsAt(string position) => (_byPosition ??= Many(_claims, c => [c.At?.Id]))[position];

    internal IEnumerable<Claim> ClaimsFrom(string source) => (_bySource ??= Many(_claims, c => [c.Source?.Id]))[source];

    internal IEnumerable<Claim> ClaimsIn(string machine) => (_byMachine ??= Many(_claims, c => [c.Machine?.Id]))[machine];

    internal IEnumerable<Repair> RepairsOf(string part) =>
        (_repairsByPart ??= Many(_repairs, r => [.. r.Removed.Select(x => x.Part.Id), .. r.Fitted.Select(x => x.Part.Id)]))[part];

    internal IEnumerable<Repair> RepairsAt(string position) => (_repairsByPosition ??= Many(_repairs, PositionsOf))[position];

    internal IEnumerable<Repair> RepairsInside(string assembly) => (_repairsByAssembly ??= Many(_repairs, AssembliesOf))[assembly];

    internal IEnumerable<Repair> RepairsOn(string machineOrUnit) =>
        (_repairsByMachine ??= Many(_repairs, r => [r.Machine?.Id, r.Unit?.Id]))[machineOrUnit];

    internal IEnumerable<Repair> RepairsFor(string symptom) => (_repairsBySymptom ??= Many(_repairs, r => [r.Symptom?.Id]))[symptom];

    /// <summary>Repairs that took from a bag, unit or order, put something there, or changed that unit.</summary>
    internal IEnumerable<Repair> RepairsUsing(string holder) => (_repairsByHolder ??= Many(_repairs, r =>
        [.. r.Fitted.Select(f => f.From?.Id), .. r.Removed.Select(x => x.To?.Id), r.Swapped?.In?.Id, r.Swapped?.Out?.Id, r.Unit?.Id]))[holder];

    internal IEnumerable<Note> NotesAbout(string id) => (_notes ??= Many(
        InUse(library.Notes.Values).OrderBy(n => n.Title, StringComparer.Ordinal).ThenBy(n => n.Id, StringComparer.Ordinal), n => n.About.Select(a => a.Id)))[id];

    internal IEnumerable<Question> QuestionsAbout(string id) => (_questions ??= Many(
        InUse(library.Questions.Values).OrderByDescending(q => q.Date).ThenBy(q => q.Id, StringComparer.Ordinal), q => q.About.Select(a => a.Id)))[id];

    internal IEnumerable<Position> PositionsFrom(string source) => (_positionsBySource ??= Many(Positions, p => [p.Source?.Id]))[source];

    internal IEnumerable<Position> PositionsWith(string role) => (_positionsByRole ??= Many(Positions, p => [p.Role]))[role];

    internal IEnumerable<Position> PositionsListing(string part) =>
        (_positionsByListed ??= Many(Positions, p => p.Listed.Select(l => l.Part.Id)))[part];

    internal IEnumerable<Part> PartsFrom(string source) =>
        (_partsBySource ??= Many(Parts, p => [p.Source?.Id, .. p.Also.Select(a => a.Source?.Id)]))[source];

    internal IEnumerable<Part> KitsWith(string part) => (_kits ??= Many(Parts, p => p.Contains.Select(k => k.Part.Id)))[part];

    internal IEnumerable<Bag> BagsOf(string part) =>
        (_bagsByPart ??= Many(Sorted(library.Bags.Values), b => [b.Part.Id]))[part];

    internal static IEnumerable<T> InUse<T>(IEnumerable<T> records) where T : IRecord => records.Where(r => !r.Retired);

    /// <summary>Records in use, by id.</summary>
    internal static IEnumerable<T> Sorted<T>(IEnumerable<T> records) where T : IRecord => InUse(records).OrderBy(r => r.Id, StringComparer.Ordinal);

    /// <summary>This shop's own records in use, by id.</summary>
    internal static IEnumerable<T> Ours<T>(IEnumerable<T> records) where T : IRecord => Sorted(records).Where(r => !Owner.IsElsewhere(r));

    private IEnumerable<Position> Positions => library.Positions.Values.OrderBy(p => p.Address, StringComparer.Ordinal);

    private IEnumerable<Part> Parts => Sorted(library.Parts.Values);

    private static string AssemblyOf(string position) => position[..Math.Max(position.LastIndexOf('/'), 0)];

    private static IEnumerable<string> PositionsOf(Repair repair) =>
        [.. repair.Found.Select(f => f.Position.Id), .. repair.Removed.Select(r => r.Position.Id), .. repair.Fitted.Select(f => f.Position.Id)];

    private static IEnumerable<string?> AssembliesOf(Repair repair) =>
        [repair.Assembly?.Id, repair.Swapped?.Assembly.Id, .. PositionsOf(repair).Select(AssemblyOf)];

    private static ILookup<string, T> Many<T>(IEnumerable<T> records, Func<T, IEnumerable<string?>> keys) => records
        .SelectMany(r => keys(r).Where(k => k is not null).Distinct(StringComparer.Ordinal).Select(k => (Key: k!, Record: r)))
        .ToLookup(x => x.Key, x => x.Record, StringComparer.Ordinal);
}

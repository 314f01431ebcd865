using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Cli.Asking;

/// <summary>What may go into a place, with its standing, and where pieces of it are.</summary>
internal sealed class FittingOffers(Knowledge known, Job job, Position position)
{
    /// <summary>The word for a piece that was bought.</summary>
    internal const string New = "new";

    private readonly FitsAnswer _answer = known.Fits.At(position.Address, job.Machine is { } m && known.Library.Machines[m].Family.Id == position.Family ? m : null);

    /// <summary>A part and where it came from, as the value of an offer or of a typed part.</summary>
    internal static (string Part, string? From) Read(string value) => value.Split(' ') is [var part, var from] ? (part, from) : (value, null);

    /// <summary>Every piece in the house that may be fitted, best part first, and what can be bought.</summary>
    internal IReadOnlyList<Choice> All() =>
    [
        .. _answer.Candidates.SelectMany(c => Pieces(c.Part, Standing(c), c.Accepted)),
        .. _answer.Disputed.SelectMany(r => Pieces(r.Part, StandingWord.Disputed, mayBeBought: false)),
    ];

    /// <summary>Where pieces of a part are.</summary>
    internal IReadOnlyList<Choice> HoldersOf(string part) =>
    [
        .. known.Fits.House.Of(part).Where(i => i.Id != job.Holder).Select(i => (Item: i, Left: i.Quantity - job.Taken(i.Id))).Where(i => i.Left > 0)
            .Select(i => new Choice(i.Item.Id, Where(i.Item, i.Left)) { Name = $"{Words.Of(i.Item.Holder)} {i.Item.Id}" }),
        .. Knowledge.Ours(known.Library.Orders.Values).Where(o => o.Part.Id == part && o.Received is null && o.Quantity > job.Taken(o.Id))
            .Select(o => new Choice(o.Id, "not noted as received") { Name = $"order {o.Id}" }),
    ];

    /// <summary>The change with which a part goes in; empty where nobody knows whether it needs one, null where it needs none.</summary>
    internal string? ChangeOf(string part) => _answer.Candidates.FirstOrDefault(c => c.Part == part) is { IsLead: false } candidate
        ? candidate.Changes.Count > 0 ? string.Join("; ", candidate.Changes) : null : "";

    /// <summary>What has to be said about putting a part in here; null for nothing.</summary>
    internal string? RemarkOn(string part)
    {
        var candidate = _answer.Candidates.FirstOrDefault(c => c.Part == part);
        if (candidate is { Accepted: true }) return null;
        var isSafety = _answer.Safety || known.Library.Parts[part].IsSafety;
        var refusal = _answer.RuledOut.FirstOrDefault(r => r.Part == part) is { } no ? $"{known.Number(part)} is ruled out here. {no.Reason}"
            : _answer.Disputed.FirstOrDefault(r => r.Part == part) is { } both ? $"{known.Number(part)} is disputed here. {both.Reason}" : null;
        var safety = !isSafety ? null : "A safety part: only what the maker's own document names for this machine counts as a fit. " +
            (candidate is { IsLead: false, Weakest: Basis.Documented } ? $"It names {known.Number(part)} for some machines only, and what is on record of this one does not settle it." : $"It does not name {known.Number(part)} here.");
        return refusal is null && safety is null ? null : string.Join("\n", new[] { refusal, safety }.OfType<string>());
    }

    private IEnumerable<Choice> Pieces(string part, string standing, bool mayBeBought) =>
        HoldersOf(part).Where(h => known.Library.Bags.GetValueOrDefault(h.Value)?.Grade is not (Grade.Core or Grade.Sample))
            .Select(h => new Choice($"{part} {h.Value}", $"{h.Label} — {standing}") { Name = $"{known.Number(part)} from {h.Name}" })
            .Concat(mayBeBought ? [new Choice($"{part} {New}", $"bought — {standing}") { Name = $"{known.Number(part)} new" }] : []);

    private static string Standing(Candidate candidate) =>
        (candidate.IsLead ? "a lead, not an answer" : candidate.Accepted ? candidate.Standing : $"{candidate.Standing}, not an answer") +
        (candidate.Conditions.Count > 0 ? $"; check first: {string.Join("; ", candidate.Conditions)}" : "") +
        (candidate.Changes.Count > 0 ? $"; with a change: {string.Join("; ", candidate.Changes)}" : "");

    private string Where(InHouse item, int left) => string.Join(", ", new[]
    {
        item.Holder == RecordType.Unit ? null : FormattableString.Invariant($"{left} {(item.Grade is { } grade ? Words.Of(grade) : "left")}"),
        item.Bin,
        known.Library.Units.GetValueOrDefault(item.Id) is { BackInService: true } ? "then owed back" : null,
    }.OfType<string>());
}

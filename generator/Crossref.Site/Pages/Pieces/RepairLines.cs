using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Repairs in a list, each with its story in a line.</summary>
internal sealed class RepairLines(Desk desk, PageLinks links)
{
    /// <summary>A repair; with a position, only what happened there.</summary>
    internal RepairLine Of(Repair repair, string? at = null) => new(
        links.Record(repair.Id),
        repair.Date.ToString(),
        repair.Machine is { } machine ? links.Machine(machine.Id) : repair.Unit is { } unit ? links.Record(unit.Id) : new Link(null, "not on record"),
        Story(repair, at),
        OutcomeText(repair.Outcome));

    /// <summary>A repair among the newest findings.</summary>
    internal Phrase Told(Repair repair) => Phrase.Of(
        repair.Machine is { } machine ? links.Machine(machine.Id) : repair.Unit is { } unit ? links.Record(unit.Id) : null,
        repair.Symptom is { } symptom ? Phrase.Of(", ", links.Record(symptom.Id)) : null,
        ": ", Story(repair, null));

    internal static string OutcomeText(Outcome? outcome) => outcome is { } o ? Words.Of(o).Replace('-', ' ') : "not on record";

    private string Story(Repair repair, string? at)
    {
        var clauses = new List<string>();
        clauses.AddRange(repair.Found.Where(f => Here(f.Position)).Select(f => $"{Place(f.Position, at)}{f.Condition}"));
        clauses.AddRange(repair.Fitted.Where(f => Here(f.Position))
            .Select(f => $"{Place(f.Position, at)}fitted {desk.Wording.Part(f.Part.Id)}{(f.Change is { } change ? $" ({change})" : "")}"));
        if (repair.Swapped is { } swap && at is null) clauses.Add($"whole unit changed: {swap.Out?.Id ?? "not on record"} out, {swap.In?.Id ?? "not on record"} in");
        return clauses.Count == 0 ? repair.Note ?? "" : string.Join("; ", clauses);

        bool Here(Ref position) => at is null || position.Id == at;
    }

    private string Place(Ref position, string? at) =>
        at is not null ? "" : (desk.Library.Positions.GetValueOrDefault(position.Id)?.Name ?? position.Id) + ": ";
}

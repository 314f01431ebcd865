using Crossref.Core.Records;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Pieces;

/// <summary>Machines in a list.</summary>
internal sealed class MachineLines(Desk desk, PageLinks links)
{
    internal MachineLine Of(Machine machine) => new(
        links.Machine(machine.Id), machine.Id, links.Family(machine.Family.Id), MachineAnswers.Facts(desk.Library, machine), Latest(machine));

    private static string Latest(Machine machine) =>
        machine.Readings.Where(r => r.Counter is null).OrderBy(r => r.Date).LastOrDefault() is { } last ? $"{last.Count} on {last.Date}" : "not on record";
}

using System.Globalization;
using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Pages.Pieces;
using Crossref.Site.Pages.Views;

namespace Crossref.Site.Pages.Kinds;

/// <summary>A machine's page: its plate, its counters, its repairs and what was tried in it.</summary>
internal sealed class MachinePages(Desk desk)
{
    internal IEnumerable<Sheet> All() => RecordIndex.Sorted(desk.Library.Machines.Values).Select(Of);

    private Sheet Of(Machine machine)
    {
        var path = desk.Map.Of(machine)!.Value.Path;
        var links = desk.LinksFrom(path);
        var family = desk.Library.Families.GetValueOrDefault(machine.Family.Id);
        var units = new UnitViews(desk, links);
        var view = new MachineView
        {
            Facts = [.. Facts(machine, links)],
            Assemblies = [.. (family is { Retired: false } ? family.Assemblies : []).Select(a => AssemblyLines.Of(desk, links, a))],
            Readings = [.. Readings(machine)],
            Repairs = [.. desk.Index.RepairsOn(machine.Id).Select(r => new RepairLines(desk, links).Of(r))],
            Claims = [.. desk.Index.ClaimsIn(machine.Id).Select(new ClaimLines(desk, links).Of)],
            Units = [.. RecordIndex.Sorted(desk.Library.Units.Values).Where(u => House.MachineOf(desk.Library, u) == machine.Id).Select(units.Of)],
            Notes = [.. desk.Index.NotesAbout(machine.Id).Select(n => links.Record(n.Id))],
            Note = machine.Note,
        };
        var crumbs = Crumbs.Of(links, links.Overview("machines", "Machines"));
        return new Sheet(path, "machine.html", "Machine", desk.Library.MachineName(machine.Id), crumbs, view) { Reference = machine.Id };
    }

    private IEnumerable<Pair> Facts(Machine machine, PageLinks links)
    {
        yield return new Pair("Family", links.Family(machine.Family.Id));
        yield return new Pair("Model", machine.Model ?? "not on record");
        yield return new Pair("Serial", machine.Serial ?? "not on record");
        var mains = MachineContext.Of(desk.Library, machine).Mains;
        yield return new Pair("Mains", mains is { } volts ? string.Create(CultureInfo.InvariantCulture, $"{volts:0.##} V") : "not on record");
    }

    private static IEnumerable<ReadingRow> Readings(Machine machine)
    {
        var rows = new List<ReadingRow>();
        var last = new Dictionary<string, Core.Records.Reading>(StringComparer.Ordinal);
        foreach (var reading in machine.Readings.OrderBy(r => r.Date).ThenBy(r => r.Reset).ThenBy(r => r.Count.Value))
        {
            var before = last.GetValueOrDefault(reading.Counter ?? "");
            var since = before is null || reading.Reset || before.Count.Unit != reading.Count.Unit || reading.Count.Value < before.Count.Value
                ? ""
                : "+" + CandidateViews.Number(reading.Count.Value - before.Count.Value);
            rows.Add(new ReadingRow(reading.Date.ToString(), reading.Count.ToString(), (reading.Counter ?? "total") + (reading.Reset ? ", set anew" : ""), since));
            last[reading.Counter ?? ""] = reading;
        }
        return Enumerable.Reverse(rows);
    }
}

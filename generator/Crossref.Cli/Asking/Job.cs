using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Recording;

namespace Crossref.Cli.Asking;

/// <summary>A repair as far as it is told, in the fields and lines of <see cref="RepairForm"/>.</summary>
internal sealed class Job(Library library, IReadOnlyDictionary<string, string> given, IEnumerable<(string Kind, RepairLine Line)> lines)
{
    internal Dictionary<string, string> Fields { get; } = new(given, StringComparer.Ordinal);

    internal List<(string Kind, RepairLine Line)> Lines { get; } = [.. lines];

    internal string? Machine => Fields.GetValueOrDefault("machine");

    /// <summary>The machine, or the unit on the bench.</summary>
    internal string Holder => Machine ?? Fields["unit"];

    internal string Family => Machine is { } machine ? library.Machines[machine].Family.Id : library.Units[Fields["unit"]].Family.Id;

    /// <summary>What was opened; null when nothing was.</summary>
    internal Assembly? Assembly => Fields.TryGetValue("assembly", out var id)
        ? library.Assemblies.GetValueOrDefault(id.Contains('/', StringComparison.Ordinal) ? id : $"{Family}/{id}")
        : Machine is null ? library.Assemblies.GetValueOrDefault(library.Units[Fields["unit"]].Assembly.Id) : null;

    /// <summary>How early the symptom names a place among its suspects; a large number when it does not.</summary>
    internal int Suspicion(Position position) =>
        Fields.TryGetValue("symptom", out var symptom) && library.Symptoms[symptom].Suspects.ToList().FindIndex(s => s.Id == position.Role) is >= 0 and var at ? at : int.MaxValue;

    internal void Add(string kind, string position, string? value, params (string Word, string? Says)[] more) =>
        Lines.Add((kind, new RepairLine(position, value, more.Where(m => m.Says is not null).ToDictionary(m => m.Word, m => m.Says!, StringComparer.Ordinal))));

    /// <summary>Whether anything was said of a place.</summary>
    internal bool Speaks(Position position) => Lines.Any(l => Find(l.Line.Position) == position);

    /// <summary>A place as the record writes it: by its own name in the assembly that was opened, else behind the other one's.</summary>
    internal string Written(Position position) => Assembly?.Positions.Contains(position) == true ? position.Id : $"{position.Assembly}/{position.Id}";

    /// <summary>How many pieces this repair took out of a bag, order or unit so far.</summary>
    internal int Taken(string holder) => Lines.Where(l => l.Kind == "fitted" && l.Line["from"] == holder)
        .Sum(l => int.TryParse(l.Line["quantity"], out var count) ? count : Find(l.Line.Position)?.Quantity ?? 1);

    /// <summary>What may be in a place: what the records say is in it, else what the list names for this machine. Empty when it is known to be empty.</summary>
    internal IReadOnlyList<string> PartsIn(Fits fits, Position position) => InPlace.Of(library, Holder, position) switch
    {
        null => fits.FactsFor(Machine).Listed(position),
        { Part: { } part } => [part],
        _ => [],
    };

    private Position? Find(string written) =>
        new[] { written, $"{Family}/{written}", $"{Assembly?.Address}/{written}" }.Select(library.Positions.GetValueOrDefault).FirstOrDefault(p => p is not null);
}

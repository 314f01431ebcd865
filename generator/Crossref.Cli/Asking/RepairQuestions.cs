using System.Globalization;
using Crossref.Core.Evidence;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Recording;

namespace Crossref.Cli.Asking;

/// <summary>The questions about a whole repair: on what and why, place after place, and how it ended.</summary>
/// <param name="known">What the library offers.</param>
/// <param name="today">The day of the repair.</param>
/// <param name="given">Fields that are not asked.</param>
/// <param name="lines">Lines that are there already.</param>
internal sealed class RepairQuestions(Knowledge known, DateOnly today, IReadOnlyDictionary<string, string> given, IEnumerable<(string Kind, RepairLine Line)> lines) : IQuestions
{
    private readonly Library _library = known.Library;
    private readonly Job _job = new(known.Library, given, lines);

    /// <inheritdoc/>
    public IReadOnlyList<NewRecord> Form(RecordingDesk desk) => desk.Repair(_job.Fields, _job.Lines.ToLookup(l => l.Kind, l => l.Line));

    /// <inheritdoc/>
    public IEnumerable<Question> Ask() => Subject().Concat(Counter()).Concat(Reason().Where(IsOpen)).Concat(new PlacesQuestions(known, _job).Ask()).Concat(End().Where(IsOpen));

    private bool IsOpen(Question question) => !given.ContainsKey(question.Field);

    private IEnumerable<Question> Subject()
    {
        if (given.ContainsKey("machine") || given.ContainsKey("unit")) yield break;
        var units = Knowledge.Ours(_library.Units.Values).Where(u => House.MachineOf(_library, u) is null).ToList();
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        yield return new Question(answers, "id", units.Count == 0 ? "Which machine was repaired?" : "Which machine was repaired, or which unit on the bench?")
        {
            Offers =
            [
                .. Knowledge.Ours(_library.Machines.Values).Select(m => new Choice(m.Id, m.Name ?? "")),
                .. units.Select(u => new Choice(u.Id, "on the bench: " + (_library.Assemblies.GetValueOrDefault(u.Assembly.Id)?.Name ?? u.Assembly.Id))),
            ],
            Read = text => Knowledge.Require(text, _library.Machines.Keys.Concat(_library.Units.Keys), "machine or unit"),
        };
        _job.Fields[_library.Units.ContainsKey(answers["id"]) ? "unit" : "machine"] = answers["id"];
    }

    private IEnumerable<Question> Counter()
    {
        if (_job.Machine is not { } machine || given.Keys.Any(Words.All<CountUnit>().Contains)) yield break;
        var last = LastReading.Of(_library, machine, today);
        var unit = Words.Of(last?.Count.Unit ?? known.UnitOf(machine));
        yield return new Question(_job.Fields, unit, $"What does its counter say now, in {unit}?{(last is null ? "" : $" Last known: {last.Count} on {last.Date}.")}")
        {
            Without = "not read",
            Read = text => Knowledge.ReadCount(text) is var count && (last is null || decimal.Parse(count, CultureInfo.InvariantCulture) >= last.Count.Value || !(last.Date.Latest < today)) ? count
                : throw new CannotRunException($"That is less than the {last.Count} of {last.Date}. Read it again.", $"If the counter was set anew, a dash leaves it out; write the new count with reset: true among the readings of {machine}."),
        };
    }

    private IEnumerable<Question> Reason()
    {
        var roles = _library.Positions.Values.Where(p => p.Family == _job.Family).Select(p => p.Role).ToHashSet(StringComparer.Ordinal);
        var often = _library.Repairs.Values.Where(r => r is { Retired: false, Symptom: not null, Machine: { } m } && _library.Machines.GetValueOrDefault(m.Id)?.Family.Id == _job.Family)
            .CountBy(r => r.Symptom!.Value.Id, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var symptoms = Knowledge.InUse(_library.Symptoms.Values).OrderByDescending(s => often.GetValueOrDefault(s.Id)).ThenByDescending(s => s.Suspects.Any(r => roles.Contains(r.Id))).ToList();
        if (symptoms.Count > 0)
        {
            yield return new Question(_job.Fields, "symptom", "What was wrong with it?")
            {
                Without = "none of these",
                Offers = [.. symptoms.Select(s => new Choice(s.Id, s.Name))],
                Read = text => Knowledge.Require(text, _library.Symptoms.Keys, "symptom"),
            };
        }
        if (_job.Machine is null) yield break;
        var assemblies = _library.Assemblies.Values.Where(a => a.Family == _job.Family).OrderBy(a => a.Positions.Select(_job.Suspicion).DefaultIfEmpty(int.MaxValue).Min()).ToList();
        yield return new Question(_job.Fields, "assembly", "Which assembly was opened?")
        {
            Without = "none",
            Offers = [.. assemblies.Select(a => new Choice(a.Id, a.Name))],
            Default = assemblies.Count == 1 ? assemblies[0].Id : null,
            Read = text => Knowledge.Require(text, assemblies.Select(a => a.Id), "assembly"),
        };
    }

    private IEnumerable<Question> End()
    {
        var isWhole = _job.Lines.Where(l => l.Kind == "removed").All(r => _job.Lines.Any(f => f.Kind == "fitted" && f.Line.Position == r.Line.Position));
        yield return Question.OfWords(_job.Fields, "outcome", "How did it end?", isWhole ? Outcome.Running : Outcome.Waiting, outcome => outcome switch
        {
            Outcome.Running => "it runs",
            Outcome.Waiting => "it waits for a part",
            _ => "the fault is still there",
        });
        yield return known.Who(_job.Fields, "Who did it?");
        yield return new Question(_job.Fields, "note", "Anything else worth a line?") { Without = "nothing", Default = Question.None };
    }
}

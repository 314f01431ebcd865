using Crossref.Cli.Commands;
using Crossref.Core.Interchange;
using Crossref.Core.Records;
using Crossref.Site.Recording;

namespace Crossref.Cli.Asking;

/// <summary>The questions about a finding, each with what the library knows already.</summary>
internal sealed class FindingQuestions(Knowledge known, IReadOnlyDictionary<string, string> given) : IQuestions
{
    private readonly Library _library = known.Library;
    private readonly Dictionary<string, string> _answers = new(given, StringComparer.Ordinal);

    /// <inheritdoc/>
    public IReadOnlyList<NewRecord> Form(RecordingDesk desk) => [desk.Claim(_answers)];

    /// <inheritdoc/>
    public IEnumerable<Question> Ask() => Possible().Where(q => !given.ContainsKey(q.Field));

    private IEnumerable<Question> Possible()
    {
        yield return new Question(_answers, "machine", "Which machine was it tried in?")
        {
            Without = "none",
            Offers = [.. Knowledge.Ours(_library.Machines.Values).Select(m => new Choice(m.Id, m.Name ?? ""))],
            Read = text => Knowledge.Require(text, _library.Machines.Keys, "machine"),
        };
        var machine = _answers.GetValueOrDefault("machine");
        var family = machine is null ? null : _library.Machines[machine].Family.Id;
        if (!_answers.ContainsKey("replaces"))
        {
            yield return new Question(_answers, "at", "At which position?")
            {
                Offers = [.. _library.Positions.Values.Where(p => family is null || p.Family == family).OrderBy(p => p.Address, StringComparer.Ordinal).Select(p => new Choice(p.Address, p.Name))],
                Read = text => Known.Position(_library, text, machine),
            };
        }
        yield return new Question(_answers, "part", "Which part was tried? Its number, or its id.") { Offers = Parts(machine, family), Read = text => Known.Part(_library, text) };
        yield return Question.OfWords(_answers, "verdict", "Does it fit?", Verdict.Fits);
        if (_answers.GetValueOrDefault("verdict") == Words.Of(Verdict.FitsWithChange))
            yield return new Question(_answers, "change", "What was done to make it fit?");
        yield return Question.OfWords(_answers, "basis", "How is that known?", Basis.Seated, except: Basis.Proven);
        if (_answers.GetValueOrDefault("basis") == Words.Of(Basis.Ran) && !given.Keys.Any(Words.All<CountUnit>().Contains))
        {
            var unit = Words.Of(known.UnitOf(machine));
            yield return new Question(_answers, unit, $"How many {unit} did it run?") { Read = Knowledge.ReadCount };
        }
        var said = _library.Claims.Values.Where(c => !c.Retired).OrderByDescending(c => c.Date).ThenBy(c => c.Id, StringComparer.Ordinal);
        yield return new Question(_answers, "source", "Where is it written down?")
        {
            Without = "none",
            Offers = [.. Knowledge.InUse(_library.Sources.Values).Select(s => new Choice(s.Id, s.Title))],
            Default = said.Select(c => c.Source?.Id).FirstOrDefault(s => s is not null && _library.Sources.GetValueOrDefault(s) is { Retired: false, Kind: SourceType.Repair }),
            Read = text => Knowledge.Require(text, _library.Sources.Keys.Concat(_library.Repairs.Keys), "source"),
        };
        yield return known.Who(_answers, "Who says so?");
    }

    private IReadOnlyList<Choice> Parts(string? machine, string? family)
    {
        if (!_answers.TryGetValue("at", out var at)) return [];
        var answer = known.Fits.At(at, family == _library.Positions[at].Family ? machine : null);
        return
        [
            .. answer.Candidates.Select(c => Part(c.Part, c.Standing)), .. answer.Disputed.Select(r => Part(r.Part, StandingWord.Disputed)),
            .. answer.RuledOut.Select(r => Part(r.Part, StandingWord.RuledOut)),
        ];
    }

    private Choice Part(string id, string standing) => new(id, $"{_library.Parts[id].CurrentNumber}, {_library.Parts[id].Name} — {standing}");
}

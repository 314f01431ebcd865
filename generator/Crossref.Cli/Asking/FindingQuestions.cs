using Crossref.Cli.Commands;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Cli.Asking;

/// <summary>The questions about a finding, each with what the library knows already.</summary>
internal sealed class FindingQuestions
{
    private readonly Library _library;
    private readonly IReadOnlyDictionary<string, string> _given;
    private readonly IReadOnlyList<Question> _questions;

    internal FindingQuestions(Library library, IReadOnlyDictionary<string, string> given)
    {
        (_library, _given) = (library, given);
        var said = library.Claims.Values.Where(c => !c.Retired).OrderByDescending(c => c.Date).ThenBy(c => c.Id, StringComparer.Ordinal).ToList();
        var people = said.Select(c => c.By).Concat(library.Repairs.Values.Select(r => r.By)).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        var lastSource = said.Select(c => c.Source?.Id).FirstOrDefault(s => s is not null && library.Sources.GetValueOrDefault(s) is { Retired: false, Kind: SourceType.Repair });
        _questions =
        [
            new("machine", "Which machine was it tried in?")
            {
                Optional = true,
                Offers = _ => [.. InUse(library.Machines.Values).Select(m => new Choice(m.Id, m.Name ?? ""))],
                Read = (text, _) => Require(text, library.Machines.Keys, "machine"),
            },
            new("at", "At which position?")
            {
                Applies = a => !a.ContainsKey("replaces"),
                Offers = a => [.. Places(a).Select(p => new Choice(p.Address, p.Name))],
                Read = (text, a) => Known.Position(library, text, a.GetValueOrDefault("machine")),
            },
            new("part", "Which part was tried? Its number, or its id.") { Offers = PartsKnown, Read = (text, _) => Known.Part(library, text) },
            WordQuestion("verdict", "Does it fit?", Verdict.Fits),
            new("change", "What was done to make it fit?") { Applies = a => a.GetValueOrDefault("verdict") == Words.Of(Verdict.FitsWithChange) },
            WordQuestion("basis", "How is that known?", Basis.Seated, Basis.Proven),
            .. Enum.GetValues<CountUnit>().Select(CountQuestion),
            new("source", "Where is it written down?")
            {
                Optional = true,
                Offers = _ => [.. InUse(library.Sources.Values).Select(s => new Choice(s.Id, s.Title))],
                Default = _ => lastSource,
                Read = (text, _) => Require(text, library.Sources.Keys.Concat(library.Repairs.Keys), "source"),
            },
            new("by", "Who says so?") { Optional = true, Offers = _ => [.. people.Select(p => new Choice(p, ""))], Default = _ => people.FirstOrDefault() },
        ];
    }

    /// <summary>Every field that was given or answered; null when somebody went out.</summary>
    internal IReadOnlyDictionary<string, string>? Ask(Talk talk)
    {
        talk.Say("Enter takes what stands in brackets; an empty line goes back, or out. Nothing is written until the end.");
        var answers = new Dictionary<string, string>(_given, StringComparer.Ordinal);
        var asked = new Stack<int>();
        for (var i = 0; i < _questions.Count;)
        {
            var question = _questions[i];
            var reply = _given.ContainsKey(question.Field) || !question.Applies(answers) ? (Reply?)null : talk.Ask(question, answers);
            if (reply is null)
            {
                i++;
            }
            else if (reply.Value.Kind == ReplyKind.Answer)
            {
                if (reply.Value.Value is { } value) answers[question.Field] = value;
                asked.Push(i++);
            }
            else
            {
                if (reply.Value.Kind == ReplyKind.End || !asked.TryPop(out i)) return null;
                answers.Remove(_questions[i].Field);
            }
        }
        return answers;
    }

    private IEnumerable<Position> Places(IReadOnlyDictionary<string, string> answers)
    {
        var family = answers.TryGetValue("machine", out var m) ? _library.Machines[m].Family.Id : null;
        return _library.Positions.Values.Where(p => family is null || p.Family == family).OrderBy(p => p.Address, StringComparer.Ordinal);
    }

    private IReadOnlyList<Choice> PartsKnown(IReadOnlyDictionary<string, string> answers)
    {
        if (!answers.TryGetValue("at", out var at)) return [];
        var machine = answers.TryGetValue("machine", out var m) && _library.Machines[m].Family.Id == _library.Positions[at].Family ? m : null;
        var known = new Fits(_library).At(at, machine);
        return
        [
            .. known.Candidates.Select(c => Part(c.Part, c.Standing)), .. known.Disputed.Select(r => Part(r.Part, StandingWord.Disputed)),
            .. known.RuledOut.Select(r => Part(r.Part, StandingWord.RuledOut)),
        ];
    }

    private Choice Part(string id, string standing) => new(id, $"{_library.Parts[id].CurrentNumber}, {_library.Parts[id].Name} — {standing}");

    private Question CountQuestion(CountUnit unit) => new(Words.Of(unit), $"How many {Words.Of(unit)} did it run?")
    {
        Applies = a => a.GetValueOrDefault("basis") == Words.Of(Basis.Ran) && unit == UnitOf(a) && !_given.Keys.Any(Words.All<CountUnit>().Contains),
        Read = (text, _) => text.Where(c => c is not (' ' or ',' or '\'')).ToArray() is { Length: > 0 } digits && digits.All(char.IsAsciiDigit)
            ? new string(digits) : throw new CannotRunException($"'{text}' is not a count.", "Write digits only, such as 18000."),
    };

    private CountUnit UnitOf(IReadOnlyDictionary<string, string> answers) =>
        answers.TryGetValue("machine", out var m) && _library.Machines[m].Readings is [.., var last] ? last.Count.Unit : CountUnit.Sheets;

    private static Question WordQuestion<T>(string field, string text, T usual, params T[] except) where T : struct, Enum
    {
        var words = Words.All<T>().Except(except.Select(Words.Of)).ToList();
        return new Question(field, text)
        {
            Offers = _ => [.. words.Select(w => new Choice(w, ""))],
            Default = _ => Words.Of(usual),
            Read = (typed, _) => Require(typed, words, "word"),
        };
    }

    private static IEnumerable<T> InUse<T>(IEnumerable<T> records) where T : IRecord => records.Where(r => !r.Retired).OrderBy(r => r.Id, StringComparer.Ordinal);

    private static string Require(string text, IEnumerable<string> known, string what)
    {
        Known.Require(text, known, what, "Type a number from the list.");
        return text;
    }
}

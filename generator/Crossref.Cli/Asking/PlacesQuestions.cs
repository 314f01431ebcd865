using Crossref.Cli.Commands;
using Crossref.Core.Interchange;
using Crossref.Core.Records;

namespace Crossref.Cli.Asking;

/// <summary>Which places were worked on, one after the other, until there is no other; or the whole unit that was changed.</summary>
internal sealed class PlacesQuestions(Knowledge known, Job job)
{
    private const string NoMore = "no";
    private const string WholeUnit = "whole-unit";

    private readonly Library _library = known.Library;

    internal IEnumerable<Question> Ask()
    {
        if (job.Assembly is not { } assembly) yield break;
        string? remark = null;
        for (var another = job.Lines.Count > 0; ; another = true)
        {
            var answers = new Dictionary<string, string>(StringComparer.Ordinal);
            // One repair changes one unit, in a machine.
            var units = job.Machine is null || job.Lines.Any(l => l.Kind == "swapped") ? [] : Knowledge.Ours(_library.Units.Values).Where(u => u.Assembly.Id == assembly.Address).ToList();
            yield return Which(answers, assembly, another, units.Count > 0) with { Remark = remark };
            var place = answers.GetValueOrDefault("place", NoMore);
            if (place == NoMore) yield break;
            var questions = place == WholeUnit ? null : new PlaceQuestions(known, job, _library.Positions[place]);
            foreach (var question in questions?.Ask() ?? Swap(assembly, units)) yield return question;
            remark = questions?.Remark;
        }
    }

    private Question Which(Dictionary<string, string> answers, Assembly assembly, bool another, bool mayBeWhole)
    {
        return new Question(answers, "place", another ? "Another place?" : "Which place did you look at or work on?")
        {
            Without = another ? null : "none",
            Default = another ? NoMore : null,
            Offers =
            [
                .. assembly.Positions.Where(p => !job.Speaks(p)).OrderBy(job.Suspicion).Select(p => new Choice(p.Address, $"{p.Name} — {In(p)}") { Name = p.Id }),
                .. mayBeWhole ? [new Choice(WholeUnit, $"the whole unit was changed: {assembly.Name}")] : Array.Empty<Choice>(),
            ],
            Read = Read,
        };

        string Read(string text)
        {
            if (text == NoMore || (mayBeWhole && text == WholeUnit)) return text;
            var address = assembly.Positions.FirstOrDefault(p => p.Id == text)?.Address ?? Known.Position(_library, text, job.Machine);
            return _library.Positions[address].Family == job.Family ? address : throw new CannotRunException($"{address} is no place in {job.Holder}.", "Type a number from the list.");
        }
    }

    private string In(Position position) => InPlace.Of(_library, job.Holder, position) switch
    {
        { Part: null } => "empty",
        { Part: { } part, Since: var since } => $"{known.Number(part)} since {since}",
        null => "listed " + string.Join(" or ", job.PartsIn(known.Fits, position).Select(known.Number).DefaultIfEmpty("nothing")),
    };

    private IEnumerable<Question> Swap(Assembly assembly, List<Unit> units)
    {
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        var (idle, inside) = (units.Where(u => House.MachineOf(_library, u) is null).ToList(), units.Where(u => House.MachineOf(_library, u) == job.Machine).ToList());
        yield return Unit(answers, "out", $"Which came out: {assembly.Name}?", units, inside);
        yield return Unit(answers, "in", $"Which went in: {assembly.Name}?", units, idle);
        job.Add("swapped", assembly.Id, null, [.. answers.Select(a => (a.Key, (string?)a.Value))]);
    }

    private Question Unit(Dictionary<string, string> answers, string field, string text, List<Unit> units, List<Unit> likely) => new(answers, field, text)
    {
        Without = "one that is not on record",
        Offers = [.. likely.Concat(units.Except(likely)).Select(u => new Choice(u.Id, House.MachineOf(_library, u) is { } machine ? "in " + machine : u.Bin ?? "idle"))],
        Default = likely.Count == 1 ? likely[0].Id : null,
        Read = typed => Knowledge.Require(typed, units.Select(u => u.Id), "unit"),
    };
}

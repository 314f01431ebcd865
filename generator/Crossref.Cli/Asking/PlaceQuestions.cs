using System.Globalization;
using Crossref.Core.Records;

namespace Crossref.Cli.Asking;

/// <summary>What was found at one place, what came out and what went in.</summary>
internal sealed class PlaceQuestions(Knowledge known, Job job, Position position)
{
    private const string Stays = "stays";
    private const string Scrap = "scrap";
    private const string Bag = "bag";

    private readonly Library _library = known.Library;
    private readonly Dictionary<string, string> _answers = new(StringComparer.Ordinal);

    /// <summary>What has to be said about the part that went in; null for nothing.</summary>
    internal string? Remark { get; private set; }

    internal IEnumerable<Question> Ask()
    {
        yield return new Question(_answers, "found", $"{position.Name}: what was found? More words behind a comma.")
        {
            Without = "nothing to note",
            Offers = [.. Conditions().Take(9).Select(c => new Choice(c, ""))],
        };
        var found = _answers.GetValueOrDefault("found")?.Split(',', 2, StringSplitOptions.TrimEntries);
        var (failed, inside) = (found is not null && Finding.MeansFailed(found[0]) ? found[0] : null, job.PartsIn(known.Fits, position));
        if (found is not null) job.Add("found", job.Written(position), found[0], ("note", found.ElementAtOrDefault(1)));
        yield return new Question(_answers, "to", "Where did the old part go?")
        {
            Without = "the place was empty",
            Offers = [new Choice(Stays, "it is still in there, or in there again"), new Choice(Scrap, "thrown away"), new Choice(Bag, "kept, into a new bag")],
            Default = inside.Count == 0 && position.Listed.Count > 0 ? Question.None : found is not null && failed is null ? Stays : Scrap,
            Read = text => Knowledge.Require(text, [Stays, Scrap, Bag], "word"),
        };
        var to = _answers.GetValueOrDefault("to");
        if (to == Stays) yield break;
        if (position.Quantity > 1) yield return HowMany();
        // All of them is what a record means that says nothing of it.
        var quantity = _answers.TryGetValue("quantity", out var many) && many != All ? many : null;
        if (to is not null)
        {
            foreach (var question in Out(inside, failed)) yield return question;
            job.Add("removed", job.Written(position), _answers["part"],
                ("to", to), ("quantity", quantity),
                ("grade", _answers.GetValueOrDefault("grade")), ("bin", _answers.GetValueOrDefault("bin")), ("defect", _answers.GetValueOrDefault("defect")));
        }
        var fitting = new FittingQuestions(known, job, position, quantity);
        foreach (var question in fitting.Ask()) yield return question;
        Remark = fitting.Remark;
    }

    private IEnumerable<Question> Out(IReadOnlyList<string> inside, string? failed)
    {
        yield return new Question(_answers, "part", "Which part came out? The number on it, or its id.")
        {
            Offers = [.. inside.Union(position.Listed.Select(l => l.Part.Id), StringComparer.Ordinal).Select(p => new Choice(p, _library.Parts[p].Name) { Name = known.Number(p) })],
            Default = inside.Count == 1 ? inside[0] : null,
            Read = known.ReadPart,
        };
        if (_answers["to"] != Bag) yield break;
        yield return Question.OfWords(_answers, "grade", "How good is it?", failed is null ? Grade.PulledRunning : Grade.Runner, Says, Grade.NewSealed, Grade.NewOpened);
        yield return new Question(_answers, "bin", "Into which bin?")
        {
            Without = "none yet",
            Default = Knowledge.Ours(_library.Bags.Values).LastOrDefault(b => b.Part.Id == _answers["part"] && b.Bin is not null)?.Bin ?? Question.None,
        };
        yield return new Question(_answers, "defect", "Is anything wrong with it?") { Without = "nothing", Default = failed ?? Question.None };
    }

    private static string Says(Grade grade) => grade switch
    {
        Grade.PulledRunning => "it ran when it came out",
        Grade.BenchChecked => "checked on the bench",
        Grade.Runner => "good for one job",
        Grade.Core => "for rebuilding only",
        Grade.Sample => "for measuring only",
        _ => "",
    };

    private string All => position.Quantity.ToString(CultureInfo.InvariantCulture);

    private Question HowMany() => new(_answers, "quantity", $"How many of the {position.Quantity}?")
    {
        Default = All,
        Read = text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= 1 && count <= position.Quantity ? text
            : throw new CannotRunException($"'{text}' is not a number from 1 to {position.Quantity}.", "Write digits only."),
    };

    // What was said of places of this kind, the most frequent first, and after it what was said of others.
    private IEnumerable<string> Conditions() =>
        _library.Repairs.Values.Where(r => !r.Retired).SelectMany(r => r.Found.Select(f => (f.Position, f.Condition)).Concat(r.Removed.Where(m => m.Condition is not null).Select(m => (m.Position, Condition: m.Condition!))))
            .GroupBy(f => f.Condition, StringComparer.OrdinalIgnoreCase)
            .OrderByDescending(g => g.Count(f => _library.Positions.GetValueOrDefault(f.Position.Id)?.Kind == position.Kind)).ThenByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => g.Key);
}

using System.Globalization;
using System.Text.RegularExpressions;
using Crossref.Calculations;
using Crossref.Core.Arithmetic;
using Crossref.Core.Quantities;
using Crossref.Core.Tests.Conventions;

namespace Crossref.Core.Tests.Arithmetic;

/// <summary>Whole workings: an input of which less is known never makes a figure surer.</summary>
public partial class DoubtTests
{
    // A bound that may only rise.
    private const string Highest = "spares at the highest rate";

    public static TheoryData<string> Names => [.. Calculators.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void More_doubt_about_an_input_never_narrows_a_figure(string name)
    {
        var calculator = Calculators.All.Single(c => c.Name == name);
        var compared = 0;
        var wrong = new List<string>();
        foreach (var example in CalculationCase.All(Repository.Root).Where(c => c.Calculator == name))
        {
            var texts = Texts(calculator, example);
            foreach (var input in calculator.Inputs.Where(i => i.Measures is not null && !i.Whole && texts.ContainsKey(i.Name)))
            foreach (var share in new[] { 0.0001m, 0.001m, 0.01m })
            {
                var more = new Dictionary<string, string>(texts) { [input.Name] = Doubtful(texts[input.Name], input.Measures!.Value, share) };
                if (calculator.Run(texts, OnRecord.Nothing).Working is not { } sure || calculator.Run(more, OnRecord.Nothing).Working is not { } doubtful) continue;
                foreach (var (line, wide) in Single(sure).Join(Single(doubtful), l => l.What, l => l.What, (l, w) => (l, w)))
                {
                    if (Read(line.Figure) is not { } before || Read(wide.Figure) is not { } after) continue;
                    compared++;
                    if (line.What == Highest ? after.High < before.High : !after.Holds(before)) wrong.Add($"{example}, {input.Name} as {more[input.Name]}: {line.What} was {line.Figure}, is {wide.Figure}");
                }
            }
        }
        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.True(compared > 50, $"only {compared} figures compared");
    }

    [Fact]
    public void What_is_not_known_never_agrees_because_less_is_known()
    {
        var (wrong, unknown, agreed) = (new List<string>(), 0, 0);
        foreach (var calculator in Calculators.All)
        foreach (var example in CalculationCase.All(Repository.Root).Where(c => c.Calculator == calculator.Name))
        {
            var texts = Texts(calculator, example);
            foreach (var left in texts.Keys)
            {
                var fewer = texts.Where(t => t.Key != left).ToDictionary();
                if (calculator.Run(texts, OnRecord.Nothing).Working is not { } before || calculator.Run(fewer, OnRecord.Nothing).Working is not { } after) continue;
                foreach (var (line, then) in Single(before).Join(Single(after), l => l.What, l => l.What, (l, t) => (l, t)))
                {
                    if (line.Figure == "agrees") agreed++;
                    if (line.Figure != "unknown") continue;
                    unknown++;
                    if (then.Figure == "agrees") wrong.Add($"{example} without {left}: {line.What} was unknown and agrees");
                }
            }
        }
        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.True(unknown > 50 && agreed > 50, $"{unknown} were unknown, {agreed} agreed");
    }

    private static Dictionary<string, string> Texts(Calculator calculator, CalculationCase example) =>
        example.Inputs.ToDictionary(i => i.Key.Length > 0 ? i.Key : calculator.Inputs.Single(x => x.Argument).Name, i => i.Value);

    // Several lines of one name list things, such as near misses.
    private static IEnumerable<WorkingLine> Single(Working working) => working.Lines.GroupBy(l => l.What).Where(g => g.Count() == 1).Select(g => g.Single());

    private static string Doubtful(string text, Dimension dimension, decimal share)
    {
        if (!QuantityParser.TryParse(text, dimension, out var quantity, out _)) return text;
        var unit = UnitTable.Symbols(dimension).FirstOrDefault("");
        return $"{quantity.Value:0.#########} +/- {quantity.Uncertainty + (Math.Abs(quantity.Value) * share):0.#########} {unit}".Trim();
    }

    // "11.9 to 12.1 mm", "12 mm", "2.5 in a million".
    private static Interval? Read(string figure) => Number().Match(figure) is { Success: true } match
        ? new(double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(match.Groups[2].Success ? match.Groups[2].Value : match.Groups[1].Value, CultureInfo.InvariantCulture))
        : null;

    [GeneratedRegex(@"^(-?[0-9]+(?:\.[0-9]+)?)(?: to (-?[0-9]+(?:\.[0-9]+)?))?(?![0-9.])")]
    private static partial Regex Number();
}

using Crossref.Calculations;
using Crossref.Core.Arithmetic;

namespace Crossref.Cli.Tests;

/// <summary>Every case of the table through the real executable: the figures, the exit code, everything refused at once.</summary>
public sealed class CalculatorCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("arithmetic").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> Names => [.. Calculators.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_case_comes_out_of_the_command(string name)
    {
        var calculator = Calculators.All.Single(c => c.Name == name);
        var cases = CalculationCase.All(Path.Combine(Tool.Demo, "..")).Where(c => c.Calculator == name).ToList();
        Assert.NotEmpty(cases);
        var wrong = cases.AsParallel().AsOrdered().SelectMany(c => Wrong(calculator, c).Select(w => $"{c}: {w}")).ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public void For_people_the_answer_stands_below_the_working()
    {
        var (calculator, example) = Calculators.All.Select(c => (c, CalculationCase.All(Path.Combine(Tool.Demo, "..")).First(x => x.Calculator == c.Name && Worked(c, x) is not null))).First();
        var run = Tool.Run(_folder, [.. example.Arguments]);
        Assert.StartsWith(calculator.Title, run.Output, StringComparison.Ordinal);
        Assert.True(run.Output.IndexOf(Worked(calculator, example)!.Answer, StringComparison.Ordinal) > run.Output.IndexOf(Worked(calculator, example)!.Lines[^1].How, StringComparison.Ordinal));
    }

    private IEnumerable<string> Wrong(Calculator calculator, CalculationCase example)
    {
        var run = Tool.Run(_folder, [.. example.Arguments, "--json"]);
        var result = calculator.Run(Inputs(calculator, example), OnRecord.Nothing);
        if (result.Working is not { } working)
        {
            if (run.ExitCode != 2) yield return $"ended with {run.ExitCode}";
            if (run.Output.Length > 0) yield return "printed " + run.Output;
            foreach (var problem in result.Problems.Where(p => !run.Error.Contains($"{p.Input}: {p.Message}", StringComparison.Ordinal))) yield return $"did not say {problem} but {run.Error}";
            yield break;
        }
        if (run.ExitCode != 0)
        {
            yield return $"ended with {run.ExitCode}: {run.Error}";
            yield break;
        }
        var lines = run.Json["lines"]!.AsArray().Select(l => new WorkingLine((string)l!["what"]!, (string)l["figure"]!, (string)l["how"]!));
        if (!lines.SequenceEqual(working.Lines)) yield return "printed other lines: " + run.Output;
        if ((string?)run.Json["answer"] != working.Answer) yield return $"answered {run.Json["answer"]}";
        if (!run.Json["cautions"]!.AsArray().Select(c => (string)c!).SequenceEqual(working.Cautions)) yield return $"cautioned {run.Json["cautions"]}";
    }

    private static Working? Worked(Calculator calculator, CalculationCase example) => calculator.Run(Inputs(calculator, example), OnRecord.Nothing).Working;

    private static Dictionary<string, string> Inputs(Calculator calculator, CalculationCase example) =>
        example.Inputs.ToDictionary(i => i.Key.Length > 0 ? i.Key : calculator.Inputs.Single(x => x.Argument).Name, i => i.Value, StringComparer.Ordinal);
}

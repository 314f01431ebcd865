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

    [Fact]
    public void A_gear_in_hand_is_looked_for_among_the_parts_on_record()
    {
        string[] gear = ["gear", "--teeth", "32", "--tip", "34"];
        var found = Tool.OnDemo([.. gear, "--json"]).Json["onRecord"]!.AsArray();
        Assert.Equal(["gear-os-0430", "gear-os-0432", "gear-os-0610", "gear-ta-4185"], found.Select(f => (string)f!["part"]!));
        Assert.All(found, f => Assert.Equal(["module", "teeth"], f!["agrees"]!.AsArray().Select(a => (string)a!)));
        Assert.All(found, f => Assert.Empty(f!["unknown"]!.AsArray()));
        Assert.Equal([1, 0, 1, 0], found.Select(f => (int)f!["inHouse"]!));
        Assert.Empty(Tool.OnDemo("gear", "--teeth", "32", "--tip", "35.1", "--module", "1.033", "--json").Json["onRecord"]!.AsArray());

        var printed = Tool.OnDemo(gear).Output;
        Assert.Contains("On record with these sizes, to look at and not yet an answer:", printed, StringComparison.Ordinal);
        Assert.Contains("  OS-0430-I1  Gear, fold roller 2, early, square hub (gear-os-0430)\n      agrees: module, teeth\n      In the house: 1 in bag b-2024-038, D2\n", printed.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Contains("No part on record has these sizes.", Tool.OnDemo("gear", "--teeth", "32", "--module", "1.033").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_safety_part_is_found_and_called_no_fit()
    {
        var lamps = Tool.OnDemo("lamp", "--volts", "230", "--watts", "900").Output;
        Assert.Contains("agrees: volts", lamps, StringComparison.Ordinal);
        Assert.Contains("A safety part: sizes never make it a fit, only the maker's document does.", lamps, StringComparison.Ordinal);
        var sizes = Tool.OnDemo("bearing", "--bore", "5000").Output;
        Assert.Contains("No part on record has these sizes.", sizes, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_piece_in_hand_contradicts_is_not_looked_for()
    {
        static IEnumerable<string> Found(params string[] args) => Tool.OnDemo([.. args, "--json"]).Json["onRecord"]!.AsArray().Select(f => (string)f!["part"]!);

        Assert.Contains("brg-os-1203", Found("bearing", "6001", "--bore", "12"));
        Assert.Equal(["brg-ta-4220"], Found("bearing", "6001", "--bore", "15"));
        Assert.Equal(["brg-ta-5230"], Found("bearing", "F688ZZ"));
        Assert.Empty(Found("bearing", "688ZZ"));
        // 27 mm over 32 teeth may be 32 DP or module 0.8, and is surely not module 1; 34.3 mm may be module 1 or 25 DP.
        Assert.Empty(Found("gear", "--teeth", "32", "--tip", "27"));
        Assert.Contains("gear-os-0430", Found("gear", "--teeth", "32", "--tip", "34.3"));
        Assert.Contains("agrees: teeth; unknown: module", Tool.OnDemo("gear", "--teeth", "32", "--tip", "34.3").Output, StringComparison.Ordinal);
        Assert.Equal(["lmp-ta-4265"], Found("lamp", "--volts", "120", "--watts", "1000"));
        Assert.Empty(Found("lamp", "--volts", "120", "--watts", "1000", "--mains", "230"));
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

using Crossref.Calculations;
using Crossref.Core.Arithmetic;
using Crossref.Core.Tests.Conventions;

namespace Crossref.Core.Tests.Arithmetic;

/// <summary>The table of cases, worked out in this process. The command and the pages are held against it elsewhere.</summary>
public class CalculationCaseTests
{
    public static IEnumerable<object[]> Cases() => Calculators.All.Select(c => new object[] { c.Name });

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_case_comes_out_as_its_source_says(string name)
    {
        var calculator = Calculators.All.Single(c => c.Name == name);
        var cases = CalculationCase.All(Repository.Root).Where(c => c.Calculator == name).ToList();
        Assert.True(cases.Count >= 5, $"{name} has only {cases.Count} cases");
        var wrong = new List<string>();
        foreach (var example in cases)
        {
            if (example.Expected.Count == 0) wrong.Add($"{example}: expects nothing");
            var inputs = example.Inputs.ToDictionary(i => i.Key.Length > 0 ? i.Key : calculator.Inputs.Single(x => x.Argument).Name, i => i.Value);
            foreach (var unknown in inputs.Keys.Except(calculator.Inputs.Select(i => i.Name))) wrong.Add($"{example}: there is no input {unknown}");
            var result = calculator.Run(inputs, OnRecord.Nothing);
            foreach (var (what, figure) in example.Expected)
                if (!Comes(result, what, figure)) wrong.Add($"{example}: expected {what}: {figure}, but\n{Text(result)}");
        }
        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    private static bool Comes(CalculatorResult result, string what, string figure) => what switch
    {
        "answer has" => result.Working?.Answer.Contains(figure, StringComparison.Ordinal) == true,
        "caution has" => result.Working?.Cautions.Any(c => c.Contains(figure, StringComparison.Ordinal)) == true,
        "refused has" => result.Problems.Any(p => p.Message.Contains(figure, StringComparison.Ordinal)),
        _ => result.Working?.Lines.Any(l => l.What == what && l.Figure == figure) == true,
    };

    private static string Text(CalculatorResult result) => result.Working is { } working
        ? string.Join("\n", working.Lines.Select(l => $"    {l.What}: {l.Figure}    [{l.How}]").Append("    " + working.Answer).Concat(working.Cautions.Select(c => "    ! " + c)))
        : string.Join("\n", result.Problems.Select(p => $"    refused {p.Input}: {p.Message}"));
}

using Crossref.Core.Arithmetic;

namespace Crossref.Core.Tests.Arithmetic.Workings;

/// <summary>Runs a calculator on what somebody writes: name, text, name, text.</summary>
internal static class Run
{
    internal static CalculatorResult Of(string calculator, params string[] pairs) => Calculators.All.Single(c => c.Name == calculator)
        .Run(pairs.Chunk(2).ToDictionary(p => p[0], p => p[1], StringComparer.Ordinal), OnRecord.Nothing);

    internal static string Figure(this CalculatorResult result, string what) => result.Working!.Lines.Single(l => l.What == what).Figure;

    /// <summary>Everything that it says.</summary>
    internal static string All(this CalculatorResult result) => string.Join("\n",
        result.Working is { } working ? working.Lines.Select(l => l.ToString()).Append(working.Answer).Concat(working.Cautions) : result.Problems.Select(p => p.ToString()));
}

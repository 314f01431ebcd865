namespace Crossref.Site.Pages.Calculation;

/// <summary>What people come to a calculator with, in their words.</summary>
internal static class BenchQuestions
{
    private static readonly Dictionary<string, IReadOnlyList<BenchQuestion>> All = new(StringComparer.Ordinal)
    {
    };

    /// <summary>The questions that a calculator answers; none for a calculator without.</summary>
    internal static IReadOnlyList<BenchQuestion> Of(string calculator) => All.GetValueOrDefault(calculator, []);
}

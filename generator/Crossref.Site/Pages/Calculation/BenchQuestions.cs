namespace Crossref.Site.Pages.Calculation;

/// <summary>What people come to a calculator with, in their words.</summary>
internal static class BenchQuestions
{
    private static readonly Dictionary<string, IReadOnlyList<BenchQuestion>> All = new(StringComparer.Ordinal)
    {
        ["fit"] =
        [
            new("How much play has an H7 hole of 25 over a g6 shaft?", ("size", "25"), ("hole", "H7"), ("shaft", "g6")),
            new("Does a nylon bush of 12.05 seize on a steel shaft of 12 at 80 °C?", ("hole-size", "12.05 +/- 0.01"), ("shaft-size", "12 +/- 0.01"), ("outer", "nylon"), ("inner", "steel"), ("temperature", "80")),
            new("How loose does a PEEK sleeve of 12.05 get on its steel journal at 190 °C?", ("hole-size", "12.05 +/- 0.01"), ("shaft-size", "12 +/- 0.005"), ("outer", "peek"), ("inner", "steel"), ("temperature", "190")),
        ],
        ["spring"] =
        [
            new("How stiff is a spring of 1.2 wire, 12 over the coils, with 8.5 coils?", ("wire", "1.2"), ("outside", "12"), ("coils", "8.5"), ("material", "music-wire")),
            new("How hard does it push when 40 are pressed to 30?", ("wire", "1.2 +/- 0.01"), ("outside", "12 +/- 0.05"), ("coils", "8.5 +/- 0.25"), ("material", "music-wire"), ("free-length", "40"), ("length", "30")),
        ],
    };

    /// <summary>The questions that a calculator answers; none for a calculator without.</summary>
    internal static IReadOnlyList<BenchQuestion> Of(string calculator) => All.GetValueOrDefault(calculator, []);
}

namespace Crossref.Site.Pages.Calculation;

/// <summary>What people come to a calculator with, in their words.</summary>
internal static class BenchQuestions
{
    private static readonly Dictionary<string, IReadOnlyList<BenchQuestion>> All = new(StringComparer.Ordinal)
    {
        ["repeat"] =
        [
            new("Marks every 94 mm: what turns like that?", ("distance", "94")),
            new("Marks over three repeats, 283 mm from the first to the last", ("distance", "283 +/- 1"), ("repeats", "3")),
        ],
        ["bearing"] =
        [
            new("Which bearing is 12 × 28 × 8?", ("bore", "12 +/- 0.02"), ("outside", "28 +/- 0.02"), ("width", "8 +/- 0.05")),
            new("What does 6001-2RS mean?", ("designation", "6001-2RS")),
            new("The ring says 6901, the bore says 12.7: which is right?", ("designation", "6901"), ("bore", "12.7 +/- 0.02"), ("outside", "24 +/- 0.02")),
        ],
        ["fit"] =
        [
            new("How much play has a g6 shaft of 12 in an H7 hole?", ("size", "12"), ("hole", "H7"), ("shaft", "g6")),
            new("How loose does a PEEK sleeve of 12.05 get on its steel journal at 190 °C?",
                ("hole-size", "12.05 +/- 0.01"), ("shaft-size", "12 +/- 0.005"), ("outer", "peek"), ("inner", "steel"), ("temperature", "190")),
        ],
        ["gear"] =
        [
            new("32 teeth, 34 across the tips: which module?", ("teeth", "32"), ("tip", "34.02 +/- 0.02")),
            new("Is it metric or inch? Measured over 4 and over 5 teeth",
                ("teeth", "32"), ("span", "10.77 +/- 0.01"), ("span-teeth", "4"), ("next-span", "13.72 +/- 0.01")),
            new("Does it run with a gear of 28 teeth, module 1, on shafts 30 apart?",
                ("teeth", "32"), ("tip", "34.02 +/- 0.02"), ("distance", "30 +/- 0.05"), ("with-teeth", "28"), ("with-module", "1")),
        ],
        ["lamp"] =
        [
            new("What should a lamp of 230 V and 1000 W read on the meter?", ("volts", "230 V"), ("watts", "1000 W"), ("cold", "4.4 +/- 0.1 ohm"), ("leads", "0.3 ohm")),
            new("What differs between a lamp of 230 V, 1000 W and one of 120 V, 900 W?",
                ("volts", "230 V"), ("watts", "1000 W"), ("other-volts", "120 V"), ("other-watts", "900 W")),
        ],
        ["thermistor"] =
        [
            new("What should a 100 kohm thermistor with B 4000 K read at 30 °C?", ("r25", "100 kohm"), ("beta", "4000 K"), ("at", "30 +/- 1 C")),
            new("Which B has it? Read at room temperature and in warm water",
                ("ohms", "100 +/- 1 kohm"), ("at", "25 +/- 1 C"), ("other-ohms", "10.1 +/- 0.1 kohm"), ("other-at", "85 +/- 1 C")),
        ],
        ["spring"] =
        [
            new("How stiff is a spring of 1.2 wire, 12 over the coils, 8.5 coils in all?", ("wire", "1.2 +/- 0.01"), ("outside", "12 +/- 0.05"), ("coils", "8.5 +/- 0.25"), ("material", "music-wire")),
            new("How hard does it push when 40 is pressed to 30?",
                ("wire", "1.2 +/- 0.01"), ("outside", "12 +/- 0.05"), ("coils", "8.5 +/- 0.25"), ("material", "music-wire"), ("free-length", "40"), ("length", "30")),
        ],
        ["spares"] =
        [
            new("Three failed in 1,200,000 sheets: how many to keep?", ("failed", "3"), ("ran", "1200000"), ("per-day", "8000"), ("days", "10")),
            new("None failed so far: how often may it fail at most?", ("failed", "0"), ("ran", "400000")),
        ],
    };

    /// <summary>The questions that a calculator answers; none for a calculator without.</summary>
    internal static IReadOnlyList<BenchQuestion> Of(string calculator) => All.GetValueOrDefault(calculator, []);
}

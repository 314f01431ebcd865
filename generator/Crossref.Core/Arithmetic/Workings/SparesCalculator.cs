using Crossref.Core.Arithmetic.Spares;
using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>How often a part fails, by a count of failures, and how many spares carry a shop through until an order arrives.</summary>
internal static class SparesCalculator
{
    // The last few steps show how the cover grows.
    private const int Steps = 3;

    internal static Calculator Create() => new(
        "spares", "Spares to keep by what failed", "How often a part fails, how sure a few failures make that, and how many to keep until an order arrives.",
        [
            new("failed", "How many failed", Dimension.Number) { Required = true, Whole = true, MayBeZeroOrLess = true, Example = "3", Help = "In all the places together that take this part. None is a count as well." },
            new("ran", "Run while they were counted", Dimension.Number) { Required = true, Example = "1200000", Help = "In sheets, cycles or hours, all places added up: two places in one machine count twice." },
            new("per-day", "Run in a day", Dimension.Number) { Example = "8000", Help = "In the same, all places added up." },
            new("days", "Days until an order arrives", Dimension.Number) { Example = "10" },
            new("cover", "Wanted cover in percent", Dimension.Number) { Default = "95", Help = "How often nothing may be missing until then." },
            new("have", "Spares in the house", Dimension.Number) { Whole = true, MayBeZeroOrLess = true, Example = "1" },
        ],
        (inputs, _) => Work(inputs));

    private static Working? Work(CalculatorInputs inputs)
    {
        foreach (var name in new[] { "failed", "have" })
            if (inputs.Count(name) > Poisson.Most) inputs.Refuse(name, $"write {Poisson.Most} or fewer");
        var percent = inputs.Value("cover")!.Value;
        if (!Poisson.Covers.Holds(percent)) inputs.Refuse("cover", $"write a cover from {Figure.Of(Poisson.Covers, 1, "%")}");
        var asksHowMany = inputs.Has("per-day") || inputs.Has("days") || inputs.Has("have");
        if (asksHowMany && !inputs.Has("per-day")) inputs.Refuse("per-day", "write how much it runs in a day as well");
        if (asksHowMany && !inputs.Has("days")) inputs.Refuse("days", "write how many days an order takes as well");
        if (inputs.Problems.Count > 0) return null;

        var (failed, ran, bounds) = (inputs.Count("failed")!.Value, inputs.Measure("ran")!.Value, FailureCount.Bounds(inputs.Count("failed")!.Value));
        var (rate, rates) = (Shown.Of((double)failed / ran * 1e6, "in a million"), Shown.Of(bounds / ran * 1e6, "in a million"));
        List<WorkingLine> lines =
        [
            new("failure rate", rate, "failures / run"),
            new("bounds of the rate", rates, "95 % sure: half of chi-square at 2.5 % and 97.5 %, with 2k and 2k + 2 degrees of freedom, by the run (Garwood 1936)"),
        ];
        if (inputs.Measure("per-day") is not { } perDay || inputs.Measure("days") is not { } days)
            return new Working { Lines = lines, Answer = failed == 0 ? $"None failed, which leaves room for {rates}." : $"{rate} fail; the count leaves room for {rates}.", Cautions = SparesCautions.All };

        var (ahead, level) = (perDay * days, percent / 100);
        var (expected, most) = ((double)failed / ran * ahead, (bounds / ran * ahead).High);
        if (most > Poisson.Most)
        {
            inputs.Refuse("ran", $"write a longer run: by so short a one more than {Poisson.Most} may fail until an order arrives");
            return null;
        }
        lines.Add(new("expected to fail", Shown.Of(expected, ""), "rate × run in a day × days until an order arrives"));
        List<string> said = [];
        var atMost = Poisson.Fewest(most, level);
        if (failed == 0)
        {
            said.Add($"None failed, so nobody can say how many to keep; at the highest rate that this leaves open it is {atMost}.");
        }
        else
        {
            var sure = Poisson.Fewest(expected.High, level);
            var keep = new Interval(Poisson.Fewest(expected.Low, level), sure);
            for (var count = Math.Max(0, sure - Steps + 1); count <= sure; count++)
                lines.Add(new($"cover with {count}", Cover(count, expected), "e^-m · Σ m^i / i!, i = 0 to the number of spares (Poisson), m expected"));
            lines.Add(new("spares to keep", Figure.Of(keep, 0, ""), $"the fewest that cover {Figure.Number(percent, 1)} %"));
            said.Add($"Keep {Figure.Of(keep, 0, "")}: that is enough in {Cover(sure, expected)} of the waits for an order.");
            if (atMost > sure) said.Add($"So small a count leaves room for a rate that asks for {atMost}.");
        }
        lines.Add(new("spares at the highest rate", Figure.Number(atMost, 0), $"the same at {Shown.Of(most, "")} expected, the upper bound"));
        if (inputs.Count("have") is { } have)
        {
            var cover = Cover(have, new Interval(expected.Low, most));
            lines.Add(new($"cover with the {have} in the house", cover, "from the highest rate to the counted one"));
            said.Add($"What is in the house is enough in {cover} of them.");
        }
        return new Working { Lines = lines, Answer = string.Join(" ", said), Cautions = SparesCautions.All };
    }

    private static string Cover(int spares, Interval expected) => Figure.Of(expected.Falling(m => Poisson.AtMost(spares, m) * 100), 1, "%");
}

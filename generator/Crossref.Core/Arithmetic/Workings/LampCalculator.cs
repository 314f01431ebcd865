using Crossref.Core.Arithmetic.Lamps;
using Crossref.Core.Quantities;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>A heater lamp from its rating: what a meter may show, what another supply would do to it, what differs from another lamp. Never finds a fit.</summary>
internal static class LampCalculator
{
    private const string OtherLamp = "Beside another lamp: what differs?";

    // Wide enough for any lamp of a press; outside them somebody mistyped.
    private const double MostVolts = 1000;
    private const double MostWatts = 10_000;

    internal static Calculator Create() => new(
        "lamp", "Heater lamp from its rating", "What a heater lamp's rating means on the meter and on a supply, and what differs from another lamp.",
        [
            new("volts", "Rated volts", Dimension.Voltage) { Required = true, Example = "230 V", Help = "As printed on the cap of the lamp that the maker names." },
            new("watts", "Rated watts", Dimension.Power) { Required = true, Example = "1000 W" },
            new("mains", "Supply voltage", Dimension.Voltage) { Example = "230 V", Help = "The nominal voltage of the supply, or what was measured there." },
            new("cold", "Cold reading", Dimension.Resistance) { Example = "4.4 +/- 0.1 ohm", Help = "Isolated, cold, one end unplugged. For a meter that shows no contact write the most it can show, such as 10 Mohm." },
            new("leads", "Leads of the meter", Dimension.Resistance) { Example = "0.3 ohm", Help = "What the meter shows with its leads held together.", MayBeZeroOrLess = true },
            new("lit", "Lit length", Dimension.Length) { Group = OtherLamp, Example = "210" },
            new("length", "Overall length", Dimension.Length) { Group = OtherLamp, Example = "362" },
            new("ends", "Ends", null) { Group = OtherLamp, Example = "flat-blade" },
            new("other-volts", "Rated volts of the other lamp", Dimension.Voltage) { Group = OtherLamp, Example = "120 V" },
            new("other-watts", "Rated watts of the other lamp", Dimension.Power) { Group = OtherLamp, Example = "900 W" },
            new("other-lit", "Lit length of the other lamp", Dimension.Length) { Group = OtherLamp, Example = "214" },
            new("other-length", "Overall length of the other lamp", Dimension.Length) { Group = OtherLamp, Example = "366" },
            new("other-ends", "Ends of the other lamp", null) { Group = OtherLamp, Example = "lead-eyelet" },
        ],
        (inputs, _) => Work(inputs));

    private static Working? Work(CalculatorInputs inputs)
    {
        var lamp = new Lamp(inputs.Measure("volts")!.Value, inputs.Measure("watts")!.Value);
        Keep(inputs, "volts", MostVolts, "V");
        Keep(inputs, "watts", MostWatts, "W");
        Keep(inputs, "mains", MostVolts, "V");
        if (inputs.Measure("leads") is { } leads && (leads.Low < 0 || inputs.Measure("cold") is { } reading && reading.Low - leads.High <= 0))
            inputs.Refuse("leads", "write the ohms of the leads alone, from zero to less than the cold reading");
        if (inputs.Problems.Count > 0) return null;

        List<WorkingLine> lines =
        [
            new("hot resistance", Shown.Of(lamp.HotOhms, "ohm"), "V²/P at rated volts"),
            new("current", Shown.Of(lamp.Amps, "A"), "P/V at rated volts"),
            new("cold resistance", Shown.Of(lamp.ColdOhms, "ohm"), $"hot divided by {Figure.Of(Lamp.ColdToHot, 0, "")}; from memory of tungsten's resistivity, no standard"),
        ];
        List<string> said = [];
        if (inputs.Has("mains")) said.Add(LampSupply.Lay(lines, lamp, inputs.Measure("mains")!.Value));
        said.AddRange(LampComparison.Lay(lines, inputs));
        if (inputs.Has("cold")) said.Add(Reading(lines, lamp, inputs.Measure("cold")!.Value, inputs.Measure("leads")));
        if (said.Count == 0) said.Add($"A lamp of this rating has {Shown.Of(lamp.HotOhms, "ohm")} hot and about {Shown.Of(lamp.ColdOhms, "ohm")} cold.");
        said.Add("Only the maker's document for that machine makes a lamp a fit.");
        // A lamp that is refused for its supply is no lead to others like it.
        var refused = inputs.Measure("mains") is { } supply && lamp.IsRatedFor(supply) == false;
        return new Working { Lines = lines, Answer = string.Join(" ", said), Cautions = LampCautions.All, Sought = refused ? null : LampComparison.Sought(inputs) };
    }

    private static string Reading(List<WorkingLine> lines, Lamp lamp, Interval reading, Interval? leads)
    {
        var filament = reading - (leads ?? Lamp.UnmeasuredLeads);
        if (leads is null) filament = filament with { Low = Math.Max(filament.Low, 0) };
        lines.Add(new("reading without leads", Shown.Of(filament, "ohm"), leads is null
            ? $"cold reading - leads, which were not measured and may have {Figure.Of(Lamp.UnmeasuredLeads, 0, "ohm")}"
            : "cold reading - leads"));
        var (figure, how) = lamp.Filament(filament) switch
        {
            FilamentState.Open => ("open", "more ohms cold than hot: an open filament or a bad contact"),
            FilamentState.Plausible => ("intact, plausible", "inside the cold resistance of this rating"),
            FilamentState.Implausible => ("intact, not plausible", "outside the cold resistance of this rating"),
            _ => ("cannot be told", "the reading reaches inside and outside the cold resistance of this rating"),
        };
        lines.Add(new("filament", figure, how));
        return $"Filament: {figure}; a reading proves neither volts nor watts.";
    }

    private static void Keep(CalculatorInputs inputs, string name, double most, string unit)
    {
        if (inputs.Measure(name) is { } value && (value.Low < 1 || value.High > most)) inputs.Refuse(name, $"write a figure from 1 to {Figure.Of(most, 0, unit)}");
    }
}

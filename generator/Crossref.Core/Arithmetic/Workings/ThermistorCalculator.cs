using Crossref.Core.Arithmetic.Thermistors;
using Crossref.Core.Quantities;
using Crossref.Core.Records;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>A thermistor from R25 and B, or from two readings of it. Tells what is plausible, never what fits.</summary>
internal static class ThermistorCalculator
{
    internal static Calculator Create() => new(
        "thermistor", "Thermistor from R25 and B", "What a thermistor reads at a temperature, what a reading means, and B from two readings.",
        [
            new("r25", "Resistance at 25 °C", Dimension.Resistance) { Example = "100 kohm", Help = "From the parts list or the data sheet." },
            new("beta", "B value", Dimension.Kelvin) { Example = "4000 K", Help = "From the parts list or the data sheet." },
            new("ohms", "Reading", Dimension.Resistance) { Example = "79.5 +/- 0.5 kohm", Help = "Thermistor unplugged." },
            new("at", "Temperature", Dimension.Temperature) { Example = "30 +/- 1 C", Help = "Of the thermistor, when it was read.", MayBeZeroOrLess = true },
            new("other-ohms", "Second reading", Dimension.Resistance) { Example = "10.1 +/- 0.1 kohm" },
            new("other-at", "Temperature of the second reading", Dimension.Temperature) { Example = "85 +/- 1 C", MayBeZeroOrLess = true },
        ],
        (inputs, _) => Work(inputs));

    private static Working? Work(CalculatorInputs inputs)
    {
        Keep(inputs, "at");
        Keep(inputs, "other-at");
        if (inputs.Measure("beta") is { } b && !Thermistor.CredibleB.Holds(b)) inputs.Refuse("beta", $"write a B value from {Figure.Of(Thermistor.CredibleB, 0, "K")}");
        if (inputs.Problems.Count > 0) return null;

        List<WorkingLine> lines = [];
        List<string> said = [];
        if (inputs.Has("r25") && inputs.Has("beta"))
            Stated(lines, said, new Thermistor(inputs.Measure("r25")!.Value, inputs.Measure("beta")!.Value), inputs.Measure("at"), inputs.Measure("ohms"));
        if (inputs.Has("ohms") && inputs.Has("at") && inputs.Has("other-ohms") && inputs.Has("other-at")) Measured(lines, said, inputs);
        if (inputs.Problems.Count > 0) return null;
        if (lines.Count == 0)
        {
            inputs.Refuse("r25", "write R25 and B with a temperature or a reading; or two readings, each with its temperature");
            return null;
        }
        return new Working { Lines = lines, Answer = string.Join(" ", said), Cautions = ThermistorCautions.All, Sought = Sought(inputs) };
    }

    private static void Keep(CalculatorInputs inputs, string name)
    {
        if (inputs.Measure(name) is { } celsius && !Thermistor.Range.Holds(celsius)) inputs.Refuse(name, $"write a temperature from {Figure.Of(Thermistor.Range, 0, "°C")}");
    }

    private static void Stated(List<WorkingLine> lines, List<string> said, Thermistor thermistor, Interval? at, Interval? ohms)
    {
        if (at is { } celsius)
        {
            var expected = thermistor.OhmsAt(celsius);
            lines.Add(new("resistance there", Shown.Of(expected, "ohm"), "R25 · exp(B · (1/T - 1/298.15 K)), T in kelvin"));
            said.Add($"At {Figure.Of(celsius, 1, "°C")} it should have {Shown.Of(expected, "ohm")}.");
            if (ohms is { } read)
            {
                var (figure, how) = expected.HalfWidth == 0 ? ("cannot be told", "write R25, B and the temperature with what they may be off, such as 100 +/- 3 kohm")
                    : !expected.Meets(read) ? ("not plausible", "nothing the reading may be is among what it should have")
                    : expected.Holds(read) ? ("plausible", "all that the reading may be is among what it should have")
                    : ("cannot be told", "only some of what the reading may be is among what it should have");
                lines.Add(new("plausible", figure, how));
                said.Add($"The reading against that: {figure}.");
            }
        }
        if (ohms is not { } reading) return;
        if (thermistor.CelsiusAt(reading) is not { } meant)
        {
            lines.Add(new("temperature of the reading", "unknown", $"outside {Figure.Of(Thermistor.Range, 0, "°C")}: open, shorted, or another thermistor"));
            said.Add("The reading means no temperature of a fixing unit: open, shorted, or another thermistor.");
            return;
        }
        lines.Add(new("temperature of the reading", Figure.Of(meant, 1, "°C"), "1 / (ln(R/R25)/B + 1/298.15 K), less 273.15"));
        if (at is { } there) lines.Add(new("off by", Figure.Of(meant - there, 1, "°C"), "temperature of the reading - temperature"));
        said.Add($"The reading means {Figure.Of(meant, 1, "°C")}.");
    }

    private static void Measured(List<WorkingLine> lines, List<string> said, CalculatorInputs inputs)
    {
        var (ohms, at) = (inputs.Measure("ohms")!.Value, inputs.Measure("at")!.Value);
        if (Thermistor.BFrom(ohms, at, inputs.Measure("other-ohms")!.Value, inputs.Measure("other-at")!.Value) is not { } b)
        {
            inputs.Refuse("other-at", "write a temperature that is surely another one than that of the first reading");
            return;
        }
        lines.Add(new("B from the readings", Figure.Of(b, 0, "K"), "ln(R1/R2) / (1/T1 - 1/T2), T in kelvin"));
        if (!Thermistor.CredibleB.Holds(b))
        {
            said.Add($"The readings give no B that lies surely from {Figure.Of(Thermistor.CredibleB, 0, "K")}: they are doubtful, too close together, or of no thermistor of this sort.");
            return;
        }
        var r25 = ohms / new Thermistor(1, b).OhmsAt(at);
        lines.Add(new("R25 from the readings", Shown.Of(r25, "ohm"), "first reading / exp(B · (1/T1 - 1/298.15 K))"));
        if (inputs.Measure("beta") is { } beta) lines.Add(Against("stated B", beta, b, "K"));
        if (inputs.Measure("r25") is { } stated) lines.Add(Against("stated R25", stated, r25, "ohm"));
        said.Add($"The two readings give a B of {Figure.Of(b, 0, "K")} and {Shown.Of(r25, "ohm")} at 25 °C.");
    }

    private static WorkingLine Against(string what, Interval stated, Interval figure, string unit) =>
        new(what, figure.Meets(stated) ? "no difference shown" : "differs", $"{Shown.Of(stated, unit)} stated, {Shown.Of(figure, unit)} from the readings");

    private static Sought Sought(CalculatorInputs inputs)
    {
        var sizes = new Dictionary<string, Size>(StringComparer.Ordinal);
        foreach (var name in new[] { "r25", "beta" })
            if (inputs.Quantity(name) is { } quantity) sizes[name] = Arithmetic.Sought.Written(quantity);
        return new Sought(PartKind.Find("thermistor")!, sizes);
    }
}

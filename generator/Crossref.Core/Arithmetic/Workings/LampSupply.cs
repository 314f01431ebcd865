using Crossref.Core.Arithmetic.Lamps;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>What a supply does to a lamp, line by line.</summary>
internal static class LampSupply
{
    private const string Outside = "outside the formula's range";

    /// <summary>Adds the lines and says in one sentence what they come to.</summary>
    internal static string Lay(List<WorkingLine> lines, Lamp lamp, Interval supply)
    {
        var meant = SupplyVoltage.Meant(supply);
        lines.Add(meant is [var one]
            ? new("supply", Shown.Of(one.Band, "V"), $"a supply of {Shown.Of(one.Volts, "V")}: {one.Source}")
            : new("supply", "unknown", meant.Count == 0
                ? "no nominal voltage of the table is near"
                : $"may be one of {string.Join(", ", meant.Select(m => Shown.Of(m.Volts, "V")))}; write the nominal voltage"));
        var rated = lamp.IsRatedFor(supply);
        lines.Add(new("rated for that supply", rated switch { true => "yes", false => "no", null => "unknown" }, $"{Shown.Of(lamp.Volts, "V")} on the lamp, {Shown.Of(supply, "V")} written for the supply"));

        var ratio = supply / lamp.Volts;
        var holds = Rerating.Holds(ratio);
        lines.Add(new("volts over rated volts", Shown.Of(ratio, ""), holds ? "inside the formula's range, a tenth to either side" : Outside + ", which is a tenth to either side"));
        string Law(Interval exponent) => $"ratio to the power {Figure.Of(exponent, 2, "")}{(holds ? ", handbook practice" : "; " + Outside)}";
        var power = lamp.Watts * Rerating.Times(ratio, Rerating.Power);
        lines.Add(new("power there", Shown.Of(power, "W"), Law(Rerating.Power)));
        lines.Add(new("power if ohmic", Shown.Of(lamp.Watts * Rerating.Ohmic(ratio), "W"), "ratio squared: too low below rated volts, too high above"));
        lines.Add(new("current there", Shown.Of(lamp.Amps * Rerating.Times(ratio, Rerating.Current), "A"), Law(Rerating.Current)));
        lines.Add(new("light there", holds ? Shown.Of(Rerating.Times(ratio, Rerating.Flux), "times") : "unknown", holds ? Law(Rerating.Flux) : Outside));
        lines.Add(new("life there", holds ? Shown.Of(Rerating.Times(ratio, Rerating.Life), "times") : "unknown", holds
            ? $"{Law(Rerating.Life)}; one seller's figures give {Figure.Of(Rerating.MildLife, 0, "")}, {Shown.Of(Rerating.Times(ratio, Rerating.MildLife), "times")}"
            : Outside));
        if (rated == true && meant is [var own])
            lines.Add(new("power over the supply's band", Shown.Of(lamp.Watts * Rerating.Times(own.Band / lamp.Volts, Rerating.Power), "W"), Law(Rerating.Power)));

        var words = $"{Shown.Of(lamp.Volts, "V")} lamp on {Shown.Of(supply, "V")}";
        return rated switch
        {
            true => $"A {words}: the nominal voltage is the same.",
            false => $"Not a fit: a {words} is on a supply that it is not rated for; it would take about {Shown.Of(power, "W")} instead of its {Shown.Of(lamp.Watts, "W")}{(holds ? "" : ", " + Outside)}.",
            null => $"A {words}: whether it is rated for that supply is unknown.",
        };
    }
}

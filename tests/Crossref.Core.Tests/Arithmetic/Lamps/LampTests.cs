using CsCheck;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Lamps;

namespace Crossref.Core.Tests.Arithmetic.Lamps;

public class LampTests
{
    private static readonly Calculator Calculator = Calculators.All.Single(c => c.Name == "lamp");
    private static readonly Gen<double> Volts = Gen.Double[10, 900];
    private static readonly Gen<double> Share = Gen.Double[0, 0.2];

    // Workshop practice, no source: 230 V 1000 W has 53 ohm hot and 3.5 to 5 ohm cold; a lamp technology page has about a 14th.
    [Fact]
    public void A_230_V_1000_W_lamp_reads_as_the_workshop_knows_it()
    {
        var lamp = new Lamp(230, 1000);
        Assert.Equal(53, lamp.HotOhms.Middle, 0);
        Assert.True(lamp.ColdOhms.Holds(new Interval(3.5, 5)));
        Assert.True(lamp.ColdOhms.Holds(lamp.HotOhms / 14));
        Assert.Equal(FilamentState.Plausible, lamp.Filament(4.2));
        Assert.Equal(FilamentState.Plausible, lamp.Filament(5.29)); // a tenth of 52.9 ohm
        Assert.Equal(FilamentState.Implausible, lamp.Filament(1.1)); // a 120 V lamp of as many watts
        Assert.Equal(FilamentState.Implausible, lamp.Filament(20));
        Assert.Equal(FilamentState.CannotTell, lamp.Filament(new Interval(3, 4)));
        Assert.Equal(FilamentState.Open, lamp.Filament(1_000_000));
    }

    // Workshop practice, from memory: half the volts give about a third of the power.
    [Fact]
    public void Half_the_volts_give_about_a_third_of_the_power() => Assert.True(Rerating.Times(0.5, Rerating.Power).Meets(Interval.Around(1 / 3.0, 0.01)));

    [Fact]
    public void A_doubtful_rating_never_makes_a_surer_figure() =>
        Gen.Select(Volts, Gen.Double[20, 3000], Share, Share).Sample((volts, watts, share, more) =>
        {
            var sure = new Lamp(Interval.Around(volts, volts * share), Interval.Around(watts, watts * share));
            var doubtful = new Lamp(Interval.Around(volts, volts * (share + more)), Interval.Around(watts, watts * (share + more)));
            Assert.True(doubtful.HotOhms.Holds(sure.HotOhms));
            Assert.True(doubtful.Amps.Holds(sure.Amps));
            Assert.True(doubtful.ColdOhms.Holds(sure.ColdOhms));
            Assert.True(Rerating.Times(230 / doubtful.Volts, Rerating.Life).Holds(Rerating.Times(230 / sure.Volts, Rerating.Life)));
            if (doubtful.IsRatedFor(230) is { } known) Assert.Equal(known, sure.IsRatedFor(230));
        });

    [Fact]
    public void Times_holds_every_ratio_and_exponent_inside() =>
        Gen.Select(Gen.Double[0.3, 3], Gen.Double[0, 1], Gen.Double[-16, 4], Gen.Double[0, 4], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((ratio, width, exponent, reach, a, b) =>
        {
            var times = Rerating.Times(new Interval(ratio, ratio + width), new Interval(exponent, exponent + reach));
            var inside = Math.Pow(ratio + a * width, exponent + b * reach);
            Assert.InRange(inside, times.Low * (1 - 1e-12), times.High * (1 + 1e-12));
        });

    // The ohmic estimate bounds the law: a cooler filament has less resistance, a hotter one more.
    [Fact]
    public void Power_by_the_law_lies_between_the_ohmic_one_and_the_rated() =>
        Gen.Double[0.3, 3].Sample(ratio =>
        {
            var (law, ohmic) = (Rerating.Times(ratio, Rerating.Power), Rerating.Ohmic(ratio).Middle);
            if (ratio < 1) Assert.True(law.Low >= ohmic && law.High <= 1);
            else Assert.True(law.High <= ohmic && law.Low >= 1);
        });

    [Fact]
    public void A_lamp_for_another_nominal_voltage_is_never_a_fit()
    {
        foreach (var lamp in SupplyVoltage.All)
            foreach (var supply in SupplyVoltage.All)
            {
                var answer = Answer(("volts", Text(lamp.Volts)), ("watts", "900"), ("mains", Text(supply.Volts)));
                Assert.Equal(lamp != supply, answer.StartsWith("Not a fit:", StringComparison.Ordinal));
                if (lamp == supply) Assert.StartsWith($"A {Text(lamp.Volts)} V lamp on {Text(lamp.Volts)} V: the nominal voltage is the same.", answer, StringComparison.Ordinal);
            }
    }

    [Fact]
    public void Whatever_is_written_only_the_makers_document_makes_a_fit() =>
        Gen.Select(Gen.Int[10, 400], Gen.Int[10, 400], Gen.Int[0, 30], Gen.Int[100, 2000], Gen.Int[100, 2000], Gen.Bool).Sample((volts, mains, doubt, watts, other, same) =>
        {
            var answer = Answer(
                ("volts", $"{volts} +/- {Math.Min(doubt, volts - 1)}"), ("watts", Text(watts)), ("mains", Text(mains)), ("cold", "4"), ("length", "362"),
                ("other-volts", Text(same ? volts : mains)), ("other-watts", Text(same ? watts : other)), ("other-length", "362"));
            Assert.EndsWith(" Only the maker's document for that machine makes a lamp a fit.", answer, StringComparison.Ordinal);
            Assert.DoesNotContain("fit", answer[..answer.LastIndexOf(" Only", StringComparison.Ordinal)].Replace("Not a fit", "", StringComparison.Ordinal), StringComparison.Ordinal);
        });

    [Fact]
    public void A_measured_supply_that_may_be_one_of_several_leaves_the_rating_unknown()
    {
        Assert.True(new Lamp(230, 900).IsRatedFor(230));
        Assert.False(new Lamp(240, 900).IsRatedFor(230));
        Assert.Null(new Lamp(230, 900).IsRatedFor(235)); // 220, 230 or 240 V
        Assert.Null(new Lamp(240, 900).IsRatedFor(235));
        Assert.False(new Lamp(120, 900).IsRatedFor(235));
        Assert.True(new Lamp(120, 900).IsRatedFor(118));
        Assert.Null(new Lamp(new Interval(220, 240), 900).IsRatedFor(230));
        Assert.True(new Lamp(24, 50).IsRatedFor(24));
        Assert.Null(new Lamp(24, 50).IsRatedFor(new Interval(23, 25)));
    }

    [Fact]
    public void What_was_not_written_of_both_lamps_is_unknown()
    {
        var working = Run(("volts", "230"), ("watts", "900"), ("lit", "210"), ("other-volts", "230"), ("other-ends", "eyelet"));
        Assert.Equal(
            [("volts of both", "agree"), ("watts of both", "unknown"), ("lit length of both", "unknown"), ("overall length of both", "unknown"), ("ends of both", "unknown")],
            working.Lines.Where(l => l.What.EndsWith(" of both", StringComparison.Ordinal)).Select(l => (l.What, l.Figure)));
        Assert.Contains("Unknown: watts, lit length, overall length, ends.", working.Answer, StringComparison.Ordinal);
        Assert.Equal(["lit-length", "volts", "watts"], working.Sought!.Sizes.Keys.Order(StringComparer.Ordinal));
    }

    private static string Answer(params (string Name, string Text)[] texts) => Run(texts).Answer;

    private static Working Run(params (string Name, string Text)[] texts) =>
        Calculator.Run(texts.ToDictionary(t => t.Name, t => t.Text), OnRecord.Nothing).Working!;

    private static string Text(double value) => Figure.Number(value, 3);
}

using CsCheck;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Thermistors;
using Crossref.Core.Tests.Arithmetic.Reference;

namespace Crossref.Core.Tests.Arithmetic.Thermistors;

public class ThermistorTests
{
    private static readonly Gen<double> Celsius = Gen.Double[-50, 300];
    private static readonly Gen<double> B = Gen.Double[2000, 5000];

    public static TheoryData<string> Ids => [.. ReferenceRow.Read("thermistors-examples.csv").Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_law_gives_the_published_row(string id)
    {
        var row = ReferenceRow.Read("thermistors-examples.csv").Single(r => r["id"] == id);
        var (found, published) = row["kind"] == "b"
            ? (Thermistor.BFrom(row.Number("r25"), 25, row.Number("ohms"), row.Number("celsius"))!.Value, row.Number("b"))
            : (new Thermistor(row.Number("r25"), row.Number("b")).OhmsAt(row.Number("celsius")), row.Number("ohms"));
        var near = Math.Abs(found.Middle / published - 1) <= row.Number("tol");
        Assert.True(near == (row["origin"] != "published (wrong)"), $"{id}: {found.Middle} against {published}; {row["source"]}");
    }

    // One table cannot be of a thermistor with the B that its maker states: its own readings say 3431, not 3380.
    [Fact]
    public void Row_T12_is_of_another_thermistor() => Assert.Equal(3431, Thermistor.BFrom(10_000, 25, 4105, 50)!.Value.Middle, 0);

    // Worked example of a catalogue of thermistors (EPCOS, Standardized R/T characteristics, 05/02, section 1): 10.6873 kohm at
    // 5 °C and 4.4 % a kelvin there give 9.7932 kohm at 7 °C. The percentage of one temperature is B/T² at it.
    [Fact]
    public void The_catalogues_worked_example_comes_out()
    {
        var thermistor = new Thermistor(10_000, 4.4 / 100 * 278.15 * 278.15);
        Assert.Equal(9.7932 / 10.6873, thermistor.OhmsAt(7).Middle / thermistor.OhmsAt(5).Middle, 4);
    }

    [Fact]
    public void A_reading_means_the_temperature_that_it_was_read_at() =>
        Gen.Select(Celsius, B).Sample((celsius, b) =>
        {
            var thermistor = new Thermistor(100_000, b);
            Assert.Equal(celsius, thermistor.CelsiusAt(thermistor.OhmsAt(celsius))!.Value.Middle, tolerance: 1e-6);
            Assert.Equal(100_000, thermistor.OhmsAt(25).Middle, tolerance: 1e-6);
        });

    [Fact]
    public void Two_readings_give_the_B_that_they_were_made_with() =>
        Gen.Select(Celsius, Celsius, B).Where((one, other, _) => Math.Abs(one - other) > 1).Sample((one, other, b) =>
        {
            var thermistor = new Thermistor(50_000, b);
            Assert.Equal(b, Thermistor.BFrom(thermistor.OhmsAt(one), one, thermistor.OhmsAt(other), other)!.Value.Middle, tolerance: 1e-3);
        });

    [Fact]
    public void It_reads_fewer_ohms_when_it_is_hotter() =>
        Gen.Select(Celsius, Gen.Double[0.1, 50], B).Sample((celsius, rise, b) =>
            Assert.True(new Thermistor(1000, b).OhmsAt(celsius + rise).High < new Thermistor(1000, b).OhmsAt(celsius).Low));

    [Fact]
    public void More_doubt_never_makes_a_surer_figure() =>
        Gen.Select(Celsius, B, Gen.Double[0, 0.05], Gen.Double[0, 0.05]).Sample((celsius, b, share, more) =>
        {
            Interval Doubtful(double value, double by) => Interval.Around(value, Math.Abs(value) * by);
            var (sure, doubtful) = (new Thermistor(Doubtful(1000, share), Doubtful(b, share)), new Thermistor(Doubtful(1000, share + more), Doubtful(b, share + more)));
            Assert.True(doubtful.OhmsAt(Doubtful(celsius, share + more)).Holds(sure.OhmsAt(Doubtful(celsius, share))));
            var reading = new Thermistor(1000, b).OhmsAt(celsius);
            if (doubtful.CelsiusAt(reading) is { } wide) Assert.True(wide.Holds(sure.CelsiusAt(reading)!.Value));
        });

    [Fact]
    public void What_lies_outside_the_range_is_unknown()
    {
        var thermistor = new Thermistor(100_000, 4000);
        Assert.NotNull(thermistor.CelsiusAt(500));
        Assert.Null(thermistor.CelsiusAt(1)); // shorted
        Assert.Null(thermistor.CelsiusAt(1e9)); // open
        Assert.Null(Thermistor.BFrom(1000, new Interval(20, 26), 900, new Interval(25, 30)));
    }
}

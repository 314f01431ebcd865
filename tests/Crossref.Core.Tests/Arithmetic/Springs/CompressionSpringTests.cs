using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Springs;
using Crossref.Core.Tests.Arithmetic.Reference;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Springs;

public class CompressionSpringTests
{
    private static readonly Gen<(double Shear, double Wire, double Mean, double Coils)> Springs =
        from shear in Gen.Double[40, 85]
        from wire in Gen.Double[0.2, 6]
        from index in Gen.Double[3, 20]
        from coils in Gen.Double[1, 30]
        select (shear, wire, index * wire, coils);

    [Fact]
    public void Every_worked_example_comes_out_as_printed()
    {
        foreach (var row in ReferenceRow.Read("springs-examples.csv"))
        {
            var ends = SpringEnds.Find(row["ends"])!;
            Interval wire = row.Number("wire_mm"), coils = row.Number("coils");
            var rate = CompressionSpring.Rate(row.Number("shear_gpa"), wire, row.Number("outside_mm") - wire, coils - ends.Idle);
            Assert.True(Math.Abs(rate.Low - row.Number("rate_n_per_mm")) <= 0.5 * Math.Pow(10, -row.Number("decimals")), $"{rate}: {row}");
            if (row["touching_mm"].Length > 0) Assert.Equal(row.Number("touching_mm"), CompressionSpring.Touching(wire, coils, ends).Low, 9);
        }
    }

    // 81.5: wire makers for EN 10270-1. 81.0: the worked examples for music wire. 70 and 75 for stainless: from memory.
    [Theory]
    [InlineData("music-wire", 81.5)]
    [InlineData("music-wire", 81.0)]
    [InlineData("stainless-302", 70)]
    [InlineData("stainless-17-7", 75)]
    public void The_spread_holds_what_other_sources_print(string name, double shear) => Assert.True(SpringWire.Find(name)!.Shear.Holds(shear));

    [Fact]
    public void Every_wire_has_a_spread_of_a_few_per_cent_and_a_source() => Assert.All(SpringWire.All, w =>
    {
        Assert.InRange(w.Shear.HalfWidth / w.Shear.Middle, 0.005, 0.04);
        Assert.NotEmpty(w.Source);
    });

    [Fact]
    public void The_rate_scales_as_the_law_says() => (from spring in Springs from factor in Gen.Double[1.01, 3] select (spring, factor)).Sample(x =>
    {
        var ((shear, wire, mean, coils), k) = x;
        var rate = CompressionSpring.Rate(shear, wire, mean, coils).Low;
        Near(rate * k * k * k * k, CompressionSpring.Rate(shear, wire * k, mean, coils));
        Near(rate / (k * k * k), CompressionSpring.Rate(shear, wire, mean * k, coils));
        Near(rate / k, CompressionSpring.Rate(shear, wire, mean, coils * k));
        Near(rate * k, CompressionSpring.Rate(shear * k, wire, mean, coils));
        Near(rate * k, CompressionSpring.Rate(shear, wire * k, mean * k, coils));
    });

    [Fact]
    public void The_doubt_holds_every_spring_that_may_be_meant() => (
        from spring in Springs
        from doubt in Gen.Double[0, 0.05].Array[4]
        from share in Gen.Double[-1, 1].Array[4]
        select (spring, doubt, share)).Sample(x =>
    {
        double[] values = [x.spring.Shear, x.spring.Wire, x.spring.Mean, x.spring.Coils];
        var doubtful = values.Select((v, i) => Interval.Around(v, v * x.doubt[i])).ToArray();
        var one = values.Select((v, i) => v * (1 + x.doubt[i] * x.share[i])).ToArray();
        var whole = CompressionSpring.Rate(doubtful[0], doubtful[1], doubtful[2], doubtful[3]);
        return new Interval(whole.Low * (1 - 1e-12), whole.High * (1 + 1e-12)).Holds(CompressionSpring.Rate(one[0], one[1], one[2], one[3]));
    });

    private static void Near(double expected, Interval actual) => Assert.InRange(actual.Low / expected, 1 - 1e-12, 1 + 1e-12);
}

using System.Globalization;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Expansion;
using Crossref.Core.Arithmetic.Limits;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Workings;

public class FitCalculatorTests
{
    private static readonly string[] Sleeve = ["hole-size", "12.05 +/- 0.01", "shaft-size", "12 +/- 0.005", "inner", "steel", "temperature", "190"];

    private static readonly string[] Shafts = ["d", "g", "js", "k", "p"];

    private static readonly Gen<Material> Materials = Gen.Int[0, Material.All.Count - 1].Select(i => Material.All[i]);

    [Fact]
    public void A_plastic_sleeve_on_a_hot_steel_journal_comes_to_an_interval_with_its_cautions()
    {
        var result = Run.Of("fit", [.. Sleeve, "outer", "peek"]);
        Assert.Equal("0.104 to 0.195 mm", result.Figure("gap when hot"));
        Assert.EndsWith("At 190 °C loose by 0.104 to 0.195 mm.", result.Working!.Answer, StringComparison.Ordinal);
        Assert.Contains(result.Working.Cautions, c => c.StartsWith("Hot parts burn", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("outer", "pps", "PPS: expansion is on record from 0 to 90 °C only.")]
    [InlineData("start", "20", "No material is named for the outer part, so its growth is unknown.")]
    public void What_is_not_known_never_becomes_a_number(string name, string text, string caution)
    {
        var result = Run.Of("fit", [.. Sleeve, name, text]);
        Assert.Equal("unknown", result.Figure("gap when hot"));
        Assert.DoesNotContain(result.Working!.Lines, l => l.What == "gap change");
        Assert.EndsWith("The gap at 190 °C is unknown.", result.Working.Answer, StringComparison.Ordinal);
        Assert.Contains(caution, result.Working.Cautions);
    }

    [Fact]
    public void A_material_that_is_not_on_record_is_refused() =>
        Assert.Contains("'unobtainium' is none of peek, pi", Run.Of("fit", [.. Sleeve, "outer", "unobtainium"]).All(), StringComparison.Ordinal);

    [Fact]
    public void At_the_starting_temperature_the_gap_is_the_one_when_cold() => (
        from hole in Gen.Int[11_900, 12_100]
        from shaft in Gen.Int[11_900, 12_100]
        from outer in Materials
        from temperature in Gen.Int[0, 85]
        select (hole, shaft, outer, temperature)).Sample(x =>
    {
        var degrees = x.temperature.ToString(CultureInfo.InvariantCulture);
        var result = Run.Of("fit", "hole-size", Thousandths(x.hole), "shaft-size", Thousandths(x.shaft), "outer", x.outer.Name, "inner", "steel", "temperature", degrees, "start", degrees);
        return result.Figure("gap change") == "0 mm" && result.Figure("gap when hot") == result.Figure("gap when cold");
    });

    [Fact]
    public void Inches_and_millimetres_give_the_same_working() => (
        from size in Gen.Int[100, 4700]
        from off in Gen.Int[-5, 5]
        from letters in Gen.Int[0, Shafts.Length - 1].Select(i => Shafts[i])
        from grade in Gen.Int[5, 11]
        from material in Materials
        select (size, off, letters, grade, material)).Sample(x =>
    {
        string[] rest = ["shaft", x.letters + x.grade.ToString(CultureInfo.InvariantCulture), "outer", x.material.Name, "inner", "steel", "temperature", "120"];
        var inches = Run.Of("fit", [.. rest, "size", Thousandths(x.size) + " in", "hole-size", Thousandths(x.size + x.off) + " +/- 0.001 in"]);
        var millimetres = Run.Of("fit", [.. rest, "size", Millimetres(x.size), "hole-size", Millimetres(x.size + x.off) + " +/- 0.0254"]);
        return inches.Working is not null && inches.All() == millimetres.All();
    });

    [Fact]
    public void Widening_an_input_never_narrows_the_gap_when_hot() => (
        from hole in Gen.Double[11.9, 12.1]
        from shaft in Gen.Double[11.9, 12.1]
        from hot in Gen.Double[20, 84]
        from outer in Materials
        from inner in Materials
        from doubt in Gen.Double[0, 0.05].Array[4]
        from more in Gen.Double[0, 0.05].Array[4]
        select (hole, shaft, hot, outer, inner, doubt, more)).Sample(x =>
    {
        Interval Hot(double[] doubt)
        {
            var (hole, shaft, start, end) = (Interval.Around(x.hole, doubt[0]), Interval.Around(x.shaft, doubt[1]), Interval.Around(20, doubt[2]), Interval.Around(x.hot, doubt[3]));
            return Fit.Gap(hole, shaft) + ThermalExpansion.GapChange(hole, x.outer.Strain(start, end)!.Value, shaft, x.inner.Strain(start, end)!.Value);
        }
        var wide = Hot([.. x.doubt.Zip(x.more, (d, m) => d + m)]);
        return new Interval(wide.Low - 1e-12, wide.High + 1e-12).Holds(Hot(x.doubt));
    });

    [Theory]
    [InlineData("11.9945", "inside")]
    [InlineData("11.995 +/- 0.002", "doubtful")]
    [InlineData("11.9935", "outside")]
    public void A_measured_size_is_held_against_its_class(string size, string word) =>
        Assert.Equal(word, Run.Of("fit", "size", "12", "shaft", "js6", "shaft-size", size).Figure("shaft against js6"));

    private static string Thousandths(int value) => (value / 1000m).ToString(CultureInfo.InvariantCulture);

    private static string Millimetres(int thousandths) => (thousandths / 1000m * 25.4m).ToString(CultureInfo.InvariantCulture);
}

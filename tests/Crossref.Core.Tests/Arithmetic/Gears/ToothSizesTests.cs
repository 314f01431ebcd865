using System.Globalization;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Gears;
using Crossref.Core.Tests.Arithmetic.Reference;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Gears;

/// <summary>The table of tooth sizes against rules that do not know it, and what is named by it.</summary>
public class ToothSizesTests
{
    private static List<double> Series(string series) => [.. ToothSizes.All.Where(s => s.From == "ISO 54, series " + series).Select(s => s.Module)];

    [Fact]
    public void Series_one_climbs_in_steps_of_the_R10_preferred_numbers()
    {
        // R10 of ISO 3 has ten steps in a decade; each of those from 1 to 50 is there once, rounded by less than 6 %.
        var series = Series("I");
        var steps = series.Select(m => Math.Log10(m) * 10).ToList();
        Assert.Equal(Enumerable.Range(0, 18), steps.Select(s => (int)Math.Round(s)));
        Assert.All(steps, s => Assert.True(Math.Abs(s - Math.Round(s)) < 10 * Math.Log10(1.06)));
        Assert.All(series.Zip(series.Skip(1)), p => Assert.InRange(p.Second / p.First, 1.19, 1.34));
    }

    [Fact]
    public void Series_two_fills_every_gap_of_series_one()
    {
        var (one, two) = (Series("I"), Series("II"));
        Assert.All(one.Zip(one.Skip(1)), gap => Assert.Contains(two, m => m > gap.First && m < gap.Second));
        Assert.All(two.Where(m => m < 50), m => Assert.DoesNotContain(m, one));
    }

    [Fact]
    public void Sizes_are_named_once_and_by_their_value()
    {
        Assert.Equal(ToothSizes.All.Count, ToothSizes.All.Select(s => s.Name).Distinct().Count());
        Assert.Equal(ToothSizes.All.Count, ToothSizes.All.Select(s => s.Module).Distinct().Count());
        Assert.All(ToothSizes.All.Where(s => s.Name.StartsWith("module ", StringComparison.Ordinal)), s => Assert.Equal(s.Module, double.Parse(s.Name[7..], CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Every_published_diametral_pitch_is_there()
    {
        foreach (var row in ReferenceRow.Read("gears-examples.csv").Where(r => r["case"] == "dp_to_module" && r["quantity"] == "m"))
            Assert.True(ToothSizes.All.Any(s => s.Name == $"{row.Given["dp"]} DP" && Math.Abs(s.Module - row.Number("published")) < 1e-4), $"{row}");
    }

    [Theory]
    [InlineData(0.8, "module 0.8", "32 DP")]
    [InlineData(0.79375, "32 DP", "module 0.8")]
    [InlineData(1, "module 1", "25 DP")]
    [InlineData(1.25, "module 1.25", "20 DP")]
    [InlineData(2.5, "module 2.5", "10 DP")]
    public void Near_twins_name_each_other(double module, string name, string twin)
    {
        var size = ToothSizes.Nearest(module).Size;
        Assert.Equal(name, size.Name);
        Assert.Contains(twin, ToothSizes.TwinsOf(size).Select(s => s.Name));
    }

    // 24 DP is 5.8 % off module 1, 48 DP 5.8 % off module 0.5.
    [Theory]
    [InlineData(1, "24 DP")]
    [InlineData(0.5, "48 DP")]
    public void What_is_further_apart_is_no_twin(double module, string other) =>
        Assert.DoesNotContain(other, ToothSizes.TwinsOf(ToothSizes.Nearest(module).Size).Select(s => s.Name));

    [Fact]
    public void A_wider_doubt_never_names_fewer_sizes() =>
        Gen.Select(Gen.Double[0.1, 30], Gen.Double[0, 0.5], Gen.Double[0, 0.5]).Sample((module, narrow, more) =>
        {
            var few = ToothSizes.Matching(Interval.Around(module, narrow));
            var many = ToothSizes.Matching(Interval.Around(module, narrow + more));
            Assert.Empty(few.Select(m => m.Size).Except(many.Select(m => m.Size)));
            Assert.Empty(few.Where(m => m.Holds).Select(m => m.Size).Except(many.Where(m => m.Holds).Select(m => m.Size)));
        });

    [Fact]
    public void Nothing_is_near_in_a_gap()
    {
        Assert.Empty(ToothSizes.Matching(3.3));
        Assert.Equal("module 3.5", ToothSizes.Nearest(3.4).Size.Name);
    }
}

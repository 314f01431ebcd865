using Crossref.Core.Arithmetic;

namespace Crossref.Core.Tests.Arithmetic.Workings;

public class SpringCalculatorTests
{
    private static readonly string[] Coil = ["coils", "14", "ends", "open-ground", "material", "music-wire"];

    [Fact]
    public void The_outside_and_the_mean_diameter_give_the_same_rate() =>
        Assert.Equal(Run.Of("spring", [.. Coil, "wire", "2.5", "outside", "31"]).Figure("rate"), Run.Of("spring", [.. Coil, "wire", "2.5", "mean", "28.5"]).Figure("rate"));

    [Fact]
    public void Inches_give_the_same_spring() =>
        Assert.Equal(Run.Of("spring", [.. Coil, "wire", "0.1 in", "outside", "1.2 in"]).All(), Run.Of("spring", [.. Coil, "wire", "2.54", "outside", "30.48"]).All());

    [Fact]
    public void At_its_free_length_it_does_not_push() =>
        Assert.Equal("0 N", Run.Of("spring", [.. Coil, "wire", "2.5", "outside", "31", "free-length", "160", "length", "160"]).Figure("force"));

    [Theory]
    [InlineData("35", false)]
    [InlineData("35 +/- 0.1", true)]
    [InlineData("34.9", false)]
    public void Coils_that_may_touch_are_said(string length, bool touch) =>
        Assert.Equal(touch, Run.Of("spring", [.. Coil, "wire", "2.5", "outside", "31", "free-length", "160", "length", length]).All().Contains("may touch", StringComparison.Ordinal));

    [Fact]
    public void No_force_is_named_at_a_length_that_it_cannot_have()
    {
        var run = Run.Of("spring", [.. Coil, "wire", "2.5", "outside", "31", "free-length", "160", "length", "34.9"]);
        Assert.Equal("unknown", run.Figure("force"));
        Assert.Contains("cannot be pressed to 34.9 mm: its coils touch at 35 mm", run.Working!.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void One_per_cent_of_doubt_about_the_wire_makes_four_of_the_rate()
    {
        var (sure, doubtful) = (Rate([.. Coil, "wire", "2.5", "mean", "28.5"]), Rate([.. Coil, "wire", "2.5 +/- 0.025", "mean", "28.5"]));
        // What is looked for has nine decimals, so a ratio of two has eight.
        Assert.Equal(Math.Pow(1.01, 4), doubtful.High / sure.High, 8);
        Assert.Equal(Math.Pow(0.99, 4), doubtful.Low / sure.Low, 8);
    }

    [Fact]
    public void It_looks_for_springs_of_that_rate_wire_and_length()
    {
        var sought = Run.Of("spring", [.. Coil, "wire", "2.5", "outside", "31", "free-length", "160"]).Working!.Sought!;
        Assert.Equal("spring", sought.Kind.Name);
        Assert.Equal(["free-length", "rate", "wire"], sought.Sizes.Keys.Order());
        Assert.True(Interval.Of(sought.Sizes["rate"].Quantity!.Value).Holds(1.314));
    }

    private static Interval Rate(params string[] pairs) => Interval.Of(Run.Of("spring", pairs).Working!.Sought!.Sizes["rate"].Quantity!.Value);
}

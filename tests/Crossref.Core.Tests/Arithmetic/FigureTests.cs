using Crossref.Core.Arithmetic;

namespace Crossref.Core.Tests.Arithmetic;

public class FigureTests
{
    [Theory]
    [InlineData(12.0, 3, "12")]
    [InlineData(0.79375, 5, "0.79375")]
    [InlineData(0.03125, 4, "0.0313")] // exact halves go away from zero, to whichever digit
    [InlineData(0.125, 2, "0.13")]
    [InlineData(0.375, 2, "0.38")]
    [InlineData(-0.125, 2, "-0.13")]
    [InlineData(126.5, 0, "127")]
    [InlineData(127.5, 0, "128")]
    [InlineData(2.675, 2, "2.67")] // in binary it is a little less than half
    [InlineData(-0.0001, 2, "0")]
    [InlineData(100.0, 0, "100")]
    [InlineData(1e22, 2, "10000000000000000000000")]
    public void A_number_is_rounded_where_it_is_and_keeps_no_noughts_behind_the_point(double value, int decimals, string text) =>
        Assert.Equal(text, Figure.Number(value, decimals));

    [Fact]
    public void A_figure_that_may_be_two_says_both() => Assert.Equal("11.9 to 12.1 mm", Figure.Of(new Interval(11.9, 12.1), 2, "mm"));

    [Fact]
    public void Ends_that_read_alike_are_one_figure() => Assert.Equal("12°", Figure.Of(new Interval(11.999, 12.001), 1, "°"));
}

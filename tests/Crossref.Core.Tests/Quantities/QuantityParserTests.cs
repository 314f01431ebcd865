using Crossref.Core.Quantities;
using CsCheck;

namespace Crossref.Core.Tests.Quantities;

public class QuantityParserTests
{
    [Theory]
    [InlineData("17", Dimension.Length, "17", "0")]
    [InlineData("17.02 +/- 0.02", Dimension.Length, "17.02", "0.02")]
    [InlineData("17.02±0.02mm", Dimension.Length, "17.02", "0.02")]
    [InlineData("0.669 in", Dimension.Length, "16.9926", "0")]
    [InlineData("0.5 +/- 0.001 in", Dimension.Length, "12.7", "0.0254")]
    [InlineData("230 V", Dimension.Voltage, "230", "0")]
    [InlineData("12 W", Dimension.Power, "12", "0")]
    [InlineData("-15", Dimension.Angle, "-15", "0")]
    [InlineData("10 kohm", Dimension.Resistance, "10000", "0")]
    [InlineData("32", Dimension.Number, "32", "0")]
    public void What_people_write_is_read(string text, Dimension dimension, string value, string uncertainty)
    {
        Assert.True(QuantityParser.TryParse(text, dimension, out var quantity, out _));
        Assert.Equal(new Quantity(Number(value), Number(uncertainty), dimension), quantity);
    }

    [Theory]
    [InlineData("17,02", "17.02")]
    [InlineData("1,200,000", "without commas: 1200000")]
    [InlineData("12,02 +/- 0,02", "as a point: 12.02 +/- 0.02")]
    [InlineData("1/2 in", "without a stroke, such as 0.5")]
    [InlineData("1 5/16\"", "without a stroke, such as 0.5")]
    [InlineData("1-1/2 in", "without a stroke, such as 0.5")]
    [InlineData("220-240", "235 +/- 5 for 230-240")]
    [InlineData("2.5 \u2013 3 mm", "235 +/- 5 for 230-240")]
    [InlineData("17-", "write a number")]
    [InlineData("12 V", "mm")]
    [InlineData("32 mm", "plain number", Dimension.Number)]
    [InlineData("about 17", "write a number")]
    [InlineData("", "write a number")]
    [InlineData("17 +/-", "write a number")]
    [InlineData("1e3", "unit 'e3'")]
    [InlineData("99999999999", "out of range")]
    [InlineData("1 +/- 99999999999", "out of range")]
    public void Anything_else_is_refused_with_a_remedy(string text, string remedy, Dimension dimension = Dimension.Length)
    {
        Assert.False(QuantityParser.TryParse(text, dimension, out _, out var problem));
        Assert.Contains(remedy, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_printed_can_be_read_again() =>
        Gen.Select(Gen.Int[-100_000, 100_000], Gen.Int[0, 999], Gen.Enum<Dimension>()).Sample((value, width, dimension) =>
        {
            var quantity = new Quantity(value / 100m, width / 1000m, dimension);
            return QuantityParser.TryParse(quantity.ToString(), dimension, out var again, out _) && again == quantity;
        });

    [Fact]
    public void No_text_makes_it_throw() =>
        Gen.String.Sample(text => QuantityParser.TryParse(text, Dimension.Length, out _, out _) || true);

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}

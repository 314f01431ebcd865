using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

public class BearingSizesTests
{
    [Theory]
    [InlineData("6001-2RS", "bore 12, outside 28, width 8, flange none, shields 2RS, clearance CN")]
    [InlineData("F688ZZ/C3", "bore 8, outside 16, width 5, flange 18, shields 2Z, clearance C3")]
    [InlineData("MF128-2Z", "bore 8, outside 12, width 3.5, flange 13.6, shields 2Z, clearance CN")]
    [InlineData("F623ZZ", "bore 3, outside 10, width 4, shields 2Z, clearance CN")]
    [InlineData("688-2RS", "bore 8, outside 16, flange none, shields 2RS, clearance CN")]
    [InlineData("F688-2RS", "bore 8, outside 16, shields 2RS, clearance CN")]
    [InlineData("6806 T9H", "bore 30, outside 42, width 7, flange none")]
    public void A_number_says_these_sizes_and_no_more(string text, string sizes)
    {
        var said = BearingSizes.Of(BearingDesignation.Read(text)!);
        Assert.Equal(sizes, string.Join(", ", said.Select(s => $"{s.Key} {s.Value.Text}")));
        Assert.All(said, s => Assert.Equal(s.Key is "bore" or "outside" or "width", s.Value.Quantity is not null));
    }
}

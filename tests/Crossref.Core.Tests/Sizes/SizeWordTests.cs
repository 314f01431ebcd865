using Crossref.Core.Sizes;

namespace Crossref.Core.Tests.Sizes;

public sealed class SizeWordTests
{
    [Theory]
    [InlineData("shields", "ZZ", "2Z")]
    [InlineData("shields", " zz", "2z ")]
    [InlineData("flange", "none", "None")]
    [InlineData("flange", "13.2", "13.20 mm")]
    [InlineData("flange", "13.2 mm", "13.2 MM")]
    [InlineData("flange", "25.4", "1 in")]
    [InlineData("hand", "left", "Left")]
    public void Words_that_mean_the_same(string attribute, string one, string other) => Assert.True(SizeWord.Same(attribute, one, other));

    [Theory]
    [InlineData("shields", "2RS", "2Z")]
    [InlineData("shields", "Z", "2Z")]
    [InlineData("flange", "none", "13.2")]
    [InlineData("flange", "13.2", "13.3")]
    [InlineData("hand", "left", "right")]
    [InlineData("hand", "ZZ", "2Z")]
    [InlineData("profile", "13.2", "13.20")]
    public void Words_that_do_not(string attribute, string one, string other) => Assert.False(SizeWord.Same(attribute, one, other));
}

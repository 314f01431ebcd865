using Crossref.Core.Storing;

namespace Crossref.Core.Tests.Storing;

public class PortableNameTests
{
    [Theory]
    [InlineData("claims/2026-02-11-ferry-lane-k3f9.yaml")]
    [InlineData("notes/Two words, and a dot.s.md")]
    [InlineData("pictures/Übersicht.jpg")]
    [InlineData("pictures/\U0001F527.png")]
    [InlineData(".crossref/history/x")]
    [InlineData("console.md")]
    [InlineData("com.md")]
    public void A_name_that_every_stick_holds(string path) => Assert.Null(PortableName.Trouble(path));

    [Theory]
    [InlineData("a?.md")]
    [InlineData("a*b/c.md")]
    [InlineData("what: now.md")]
    [InlineData("con.md")]
    [InlineData("Aux")]
    [InlineData("com1.tar.gz")]
    [InlineData("lpt³")]
    [InlineData("folder./a.md")]
    [InlineData("a.md ")]
    [InlineData(" a.md")]
    [InlineData("a\u0007.md")]
    [InlineData("a\ufffd.md")]
    [InlineData("\udc00a.md")]
    [InlineData("../a.md")]
    public void A_name_that_some_stick_or_system_does_not_hold(string path) => Assert.NotNull(PortableName.Trouble(path));

    [Fact]
    public void A_path_may_be_200_characters_long()
    {
        Assert.Null(PortableName.Trouble(new string('a', PortableName.LongestPath)));
        Assert.NotNull(PortableName.Trouble(new string('a', PortableName.LongestPath + 1)));
    }
}

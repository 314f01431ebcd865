using Crossref.Core.Checking;

namespace Crossref.Site.Tests.Reading;

/// <summary>Names of files that came on a stick from anywhere.</summary>
public class FileNameTests
{
    [Theory]
    [InlineData("x\u001b[31m.yaml", "CR0004")]
    [InlineData("a\nb.yaml", "CR0004")]
    [InlineData("x\u202Elmay.yaml", "CR0008")]
    [InlineData("x\u200B.yaml", "CR0008")]
    [InlineData("fold\u2066er/x.yaml", "CR0008")]
    [InlineData("n\u200B.md", "CR0008")]
    public void A_name_that_hides_something_is_refused_and_shown_without_it(string name, string code)
    {
        using var folder = new TemporaryFolder();
        folder.Lay(Fixture.Sound, (_, bytes) => bytes);
        folder.Write(name, "part: hidden\nkind: gear\nname: Hidden\n");
        var found = Fixture.Diagnostics(folder.Path);
        Assert.Contains($": error {code}: ", found, StringComparison.Ordinal);
        Assert.Equal(2, found.Count(c => c == '\n'));
        Assert.Equal(-1, HiddenCharacters.IndexIn(found));
    }
}

using AngleSharp.Html.Parser;
using Crossref.Core.Records;
using Crossref.Site.Pages;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Combining;
using Crossref.Site.Tests.Pages;

namespace Crossref.Site.Tests.Sharing;

/// <summary>The page of what other copies brought.</summary>
public sealed class CopiesPageTests
{
    private static readonly SiteOptions Options = new(new DateOnly(2026, 3, 1))
    {
        Conflicts =
        [
            new Conflict(RecordType.Part, "brg-a", "conflicts/part-brg-a.txt",
                [new ConflictKey("price", [new ConflictChoice("price: 6\n", "mill", "2026-02-28"), new ConflictChoice(null, "shop", "2026-02-01")])]),
        ],
        CameIn = new CameIn("2026-02-28", "mill", [new Decision(CombineOutcome.New, RecordType.Part, "brg-b", "from/mill/<b>.yaml", ["<i>name</i>"], "")]),
    };

    [Fact]
    public void What_is_to_be_chosen_and_what_came_in_are_shown_as_text()
    {
        var page = new HtmlParser().ParseDocument(SmallLibrary.Render(SmallLibrary.Read(), Options)["copies.html"].AsText());
        var open = page.QuerySelector("article.case")!;
        Assert.Contains("content/conflicts/part-brg-a.txt", open.TextContent, StringComparison.Ordinal);
        Assert.Equal("price", open.QuerySelector("h4")!.TextContent);
        Assert.Equal(["price: 6", "(nothing)"], open.QuerySelectorAll("pre").Select(p => p.TextContent.Trim()));
        Assert.Equal(["in force", "aside"], open.QuerySelectorAll("td[data-label='Until then']").Select(c => c.TextContent));
        Assert.Contains("On 2026-02-28, from mill.", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("<i>name</i>", page.QuerySelector("section[aria-labelledby=came] li")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(page.QuerySelectorAll("section[aria-labelledby=came] li a"), a => a.GetAttribute("href") == "parts/brg-b.html");
    }

    [Fact]
    public void Without_other_copies_it_says_so()
    {
        var text = SmallLibrary.Render(SmallLibrary.Read())["copies.html"].AsText();
        Assert.Contains("Nothing is open.", text, StringComparison.Ordinal);
        Assert.Contains("Nothing has come in from another copy yet.", text, StringComparison.Ordinal);
    }
}

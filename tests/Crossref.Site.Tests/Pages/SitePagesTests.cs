using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Crossref.Site.Pages;

namespace Crossref.Site.Tests.Pages;

public sealed partial class SitePagesTests
{
    private static readonly IReadOnlyDictionary<string, SiteFile> Site = SmallLibrary.Render(SmallLibrary.Read());

    public static TheoryData<string> Pages => [.. SmallLibrary.Html(Site).Select(f => f.Path)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_has_its_frame(string path)
    {
        var page = Parse(Site[path]);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.NotEqual("", page.Title);
        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.Single(page.QuerySelectorAll("main"));
        Assert.Single(page.QuerySelectorAll("form.lookup[data-root] input[type=search]"));
        Assert.Equal("utf-8", page.QuerySelector("meta[charset]")!.GetAttribute("charset"));
        Assert.NotNull(page.QuerySelector("meta[name=viewport]"));
        Assert.Equal(
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:",
            page.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content"));
        Assert.Equal("a.skip", page.Body!.FirstElementChild!.LocalName + "." + page.Body.FirstElementChild.ClassName);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Headings_never_skip_a_level(string path)
    {
        var levels = Parse(Site[path]).QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.LocalName[1] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"h{pair.First} is followed by h{pair.Second}"));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Nothing_is_inline_and_nothing_leads_out(string path)
    {
        var page = Parse(Site[path]);
        Assert.All(page.QuerySelectorAll("*").SelectMany(e => e.Attributes), a => Assert.False(
            a.Name == "style" || a.Name.StartsWith("on", StringComparison.Ordinal), a.Name));
        Assert.Empty(page.QuerySelectorAll("style"));
        Assert.All(page.QuerySelectorAll("script"), s => Assert.Equal("", s.TextContent));
        Assert.All(Addresses(page), a => Assert.DoesNotMatch("^([a-z]+:|/)", a));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_arrives(string path)
    {
        var page = Parse(Site[path]);
        foreach (var address in Addresses(page))
        {
            var target = new Uri(new Uri("file:///site/" + path), address);
            var file = target.AbsolutePath["/site/".Length..];
            Assert.True(Site.ContainsKey(file), $"{path} leads to {file}, which is not there");
            // A fragment with an equals sign is what a page is filled in with.
            if (target.Fragment.Length > 1 && !target.Fragment.Contains('=', StringComparison.Ordinal))
                Assert.True(Parse(Site[file]).GetElementById(target.Fragment[1..]) is not null, $"{path} leads to {file}{target.Fragment}, which is not there");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Ids_are_unique_and_references_to_them_hold(string path)
    {
        var page = Parse(Site[path]);
        var ids = page.QuerySelectorAll("[id]").Select(e => e.Id!).ToList();
        Assert.Equal(ids.Distinct(StringComparer.Ordinal), ids);
        foreach (var attribute in new[] { "aria-labelledby", "aria-describedby", "for" })
            Assert.All(page.QuerySelectorAll($"[{attribute}]"), e => Assert.Contains(e.GetAttribute(attribute)!, ids));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Tables_have_headers(string path)
    {
        foreach (var table in Parse(Site[path]).QuerySelectorAll("table").Where(t => t.Closest(".prose") is null))
        {
            Assert.NotEmpty(table.QuerySelectorAll("thead th[scope=col]"));
            Assert.All(table.QuerySelectorAll("tbody tr"), row => Assert.True(row.QuerySelector("th[scope], td[colspan]") is not null, row.TextContent));
        }
    }

    [Fact]
    public void The_same_library_gives_the_same_bytes()
    {
        var again = SitePages.Render(SmallLibrary.Read(), SmallLibrary.Options).ToList();
        Assert.Equal(Site.Keys, again.Select(f => f.Path));
        Assert.All(again, f => Assert.True(f.Content.Span.SequenceEqual(Site[f.Path].Content.Span), f.Path));
    }

    [Fact]
    public void Paths_suit_every_file_system()
    {
        Assert.All(Site.Keys, path =>
        {
            Assert.Matches(SafePath(), path);
            Assert.True(path.Length <= 120, path);
        });
        Assert.Equal(Site.Count, Site.Keys.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Hostile_text_stays_text_in_every_field()
    {
        var site = SmallLibrary.Render(SmallLibrary.Read(SmallLibrary.Hostile));
        Assert.Equal(Site.Keys, site.Keys);
        var clean = SmallLibrary.Html(Site).ToDictionary(f => f.Path, f => Shape(Parse(f)), StringComparer.Ordinal);
        foreach (var file in SmallLibrary.Html(site))
        {
            var page = Parse(file);
            Assert.Equal(clean[file.Path], Shape(page));
        }
        Assert.DoesNotContain(site.Values, f => f.AsText().Contains('@', StringComparison.Ordinal) && f.Path.EndsWith(".html", StringComparison.Ordinal));
        Assert.Contains(SmallLibrary.Html(site), f => Parse(f).Body!.TextContent.Contains("<script>alert(1)</script>", StringComparison.Ordinal));
    }

    [Fact]
    public void The_library_of_these_tests_is_read_whole()
    {
        var library = SmallLibrary.Read(SmallLibrary.Hostile);
        Assert.Equal(Enum.GetValues<Core.Records.RecordType>(), library.Records.Values.Select(r => r.Type).Distinct().Order());
        Assert.Equal("colour" + SmallLibrary.Hostile.Replace("\\\"", "\"", StringComparison.Ordinal), library.Machines["folder"].Readings[2].Counter);
    }

    [Fact]
    public void A_note_shows_raw_markup_as_text_and_keeps_its_links()
    {
        var note = Parse(Site["notes/bearings.html"]);
        var prose = note.QuerySelector(".prose")!;
        Assert.Contains("<b>raw</b>", prose.TextContent, StringComparison.Ordinal);
        Assert.Contains("<div onclick", prose.TextContent, StringComparison.Ordinal);
        Assert.Contains("https://example.invalid/", prose.TextContent, StringComparison.Ordinal);
        Assert.Empty(prose.QuerySelectorAll("b, script, div, h1"));
        Assert.Equal("../parts/brg-a.html", prose.QuerySelector("a")!.GetAttribute("href"));
        Assert.Equal(7, prose.QuerySelectorAll("a").Length);
        Assert.NotNull(prose.QuerySelector("table"));
    }

    private static IEnumerable<string> Addresses(IDocument page) =>
        page.QuerySelectorAll("[href], [src]").Select(e => e.GetAttribute("href") ?? e.GetAttribute("src")!);

    // Elements and the names of their attributes: what hostile text must not be able to change.
    private static string Shape(IDocument page) => string.Join('\n', page.QuerySelectorAll("*")
        .Select(e => $"{e.LocalName} {string.Join(' ', e.Attributes.Select(a => a.Name))}"));

    private static IDocument Parse(SiteFile file) => new HtmlParser().ParseDocument(file.AsText());

    [GeneratedRegex(@"^([a-z0-9-]+/)*[a-z0-9-]+\.[a-z0-9]+$")]
    private static partial Regex SafePath();
}

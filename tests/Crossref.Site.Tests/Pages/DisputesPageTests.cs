using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Crossref.Core.Records;
using Crossref.Site.Pages;

namespace Crossref.Site.Tests.Pages;

/// <summary>The page of disputes over a library in which every sort of yes and no is planted once, beside things that nobody denies.</summary>
public sealed class DisputesPageTests
{
    private const string Planted = """
        library: shop
        title: A shop
        ---
        {source: log, type: repair, title: The red book}
        ---
        family: f1
        name: F1 folders
        maker: Ostrin
        models: [{model: F1, mains: 230}]
        assemblies:
          - assembly: head
            name: Fold head
            positions:
              - {position: one, name: Place one, kind: other}
              - {position: two, name: Place two, kind: other}
              - {position: three, name: Place three, kind: other}
              - {position: four, name: Place four, kind: other}
        ---
        {machine: folder, family: f1, model: F1, serial: 1700}
        ---
        {machine: spare, family: f1, model: F1, serial: 900}
        ---
        {part: a, kind: other, name: A, maker: Ostrin, numbers: [OS-A]}
        ---
        {part: b, kind: other, name: B, maker: Ostrin, numbers: [OS-B]}
        ---
        {part: c, kind: other, name: C, maker: Ostrin, numbers: [OS-C]}
        ---
        {claim: 2026-01-01-shop-a001, part: a, at: f1/head/one, verdict: fits, basis: seated, source: log, date: 2026-01-01}
        ---
        {claim: 2026-01-02-shop-a002, part: a, at: f1/head/one, verdict: does-not-fit, basis: seated, source: log, date: 2026-01-02}
        ---
        {claim: 2026-01-03-shop-a003, part: b, at: f1/head/two, verdict: fits, basis: seated, source: log, date: 2026-01-03}
        ---
        {claim: 2026-01-04-shop-a004, part: b, at: f1/head/two, verdict: does-not-fit, basis: measured, source: log, date: 2026-01-04}
        ---
        {claim: 2026-01-05-shop-a005, part: c, at: f1/head/three, verdict: fits, basis: seated, source: log, date: 2026-01-05}
        ---
        {claim: 2026-01-06-shop-a006, part: c, at: f1/head/three, verdict: does-not-fit, basis: seated, only-if: {serial-from: 1500}, source: log, date: 2026-01-06}
        ---
        {claim: 2026-01-07-shop-a007, part: a, at: f1/head/four, verdict: fits, basis: seated, source: log, date: 2026-01-07}
        ---
        {claim: 2026-01-08-shop-a008, part: b, replaces: a, verdict: fits, basis: measured, source: log, date: 2026-01-08}
        ---
        {claim: 2026-01-09-shop-a009, part: b, replaces: a, verdict: does-not-fit, basis: measured, source: log, date: 2026-01-09}
        ---
        {claim: 2026-01-10-shop-a010, part: c, replaces: b, verdict: fits, basis: seated, source: log, date: 2026-01-10}
        ---
        {claim: 2026-01-11-shop-a011, part: c, replaces: b, verdict: does-not-fit, basis: measured, source: log, date: 2026-01-11}
        """;

    private static readonly IReadOnlyDictionary<string, SiteFile> Site = Render(Planted);

    [Theory]
    [InlineData("places", "OS-A at Place one, F1 folders")]
    [InlineData("machines", "OS-C at Place three, folder")]
    [InlineData("comparisons", "OS-B in place of OS-A anywhere")]
    [InlineData("contradicted", "OS-B at Place two, F1 folders|OS-C in place of OS-B anywhere")]
    public void Every_yes_and_no_is_told_where_it_belongs_and_nowhere_else(string section, string expected) =>
        Assert.Equal(expected.Split('|'), Lines("disputes.html", section).Select(Head));

    [Theory]
    [InlineData("places", "what tells them apart: date")]
    [InlineData("machines", "Equally strong yes and no")]
    [InlineData("contradicted", "weaker, against it")]
    public void The_reason_says_what_stands_against_what(string section, string reason) =>
        Assert.Contains(reason, Lines("disputes.html", section)[0].QuerySelector(".sub")!.TextContent, StringComparison.Ordinal);

    [Fact]
    public void What_is_taken_back_is_no_longer_told()
    {
        var site = Render(Planted + """

            ---
            {claim: 2026-02-01-shop-b001, part: a, at: f1/head/one, withdraws: 2026-01-02-shop-a002, source: log, date: 2026-02-01}
            """);
        Assert.Empty(Lines("disputes.html", "places", site));
        Assert.NotEmpty(Lines("disputes.html", "comparisons", site));
    }

    [Fact]
    public void The_first_page_names_the_disputes_and_counts_them()
    {
        Assert.Equal(
            ["OS-A at Place one, F1 folders", "OS-C at Place three, folder", "OS-B in place of OS-A anywhere"],
            Lines("index.html", "disputes").Select(Head));
        var counts = Parse(Site["index.html"]).QuerySelector(".counts")!;
        Assert.Contains("3 disputed, 2 contradicted, 0 open questions", counts.TextContent, StringComparison.Ordinal);
        Assert.Equal(2, counts.QuerySelectorAll("a[href='disputes.html']").Length);
    }

    [Fact]
    public void A_place_and_the_page_of_disputes_lead_to_each_other()
    {
        var link = Lines("disputes.html", "places")[0].QuerySelectorAll("a").Single(a => a.TextContent == "Place one").GetAttribute("href")!;
        var place = Parse(Site[link.Split('#')[0]]);
        Assert.NotNull(place.GetElementById(link.Split('#')[1]));
        Assert.NotNull(place.QuerySelector("[aria-labelledby=disputed] a[href$='disputes.html']"));
        var undisputed = Parse(Site[PageMap.Of(Read(Planted).Positions["f1/head/four"])]);
        Assert.Null(undisputed.QuerySelector("[aria-labelledby=disputed]"));
    }

    private static string Head(IElement line) => line.FirstChild is null ? "" : string.Concat(line.ChildNodes.Where(n => n is not IElement { ClassName: "sub" }).Select(n => n.TextContent)).Trim();

    private static List<IElement> Lines(string path, string section, IReadOnlyDictionary<string, SiteFile>? site = null) =>
        [.. Parse((site ?? Site)[path]).QuerySelectorAll($"[aria-labelledby={section}] li")];

    private static IDocument Parse(SiteFile file) => new HtmlParser().ParseDocument(file.AsText());

    private static IReadOnlyDictionary<string, SiteFile> Render(string yaml) => SmallLibrary.Render(Read(yaml), new SiteOptions(new DateOnly(2026, 3, 1)));

    private static Library Read(string yaml)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(Path.Combine(folder.Path, "all.yaml"), yaml);
        var read = Crossref.Site.Reading.ContentReader.Read(folder.Path);
        Assert.True(read.Library is not null, string.Join('\n', read.Diagnostics));
        return read.Library;
    }
}

using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Crossref.Core.Records;
using Crossref.Site.Pages;

namespace Crossref.Site.Tests.Pages;

public sealed class PositionPageTests
{
    private static readonly IReadOnlyDictionary<string, SiteFile> Site = SmallLibrary.Render(SmallLibrary.Read());

    [Fact]
    public void The_best_part_comes_first_with_its_reason_and_the_way_round()
    {
        var answer = Page("tarrock-a1/head--roller-bearing-front").QuerySelector(".answer")!;
        Assert.Equal("HA-1", Text(answer.QuerySelector(".number")));
        Assert.Contains("documented Named in the maker's list (Parts list, Tarrock A1, p. 3).", Text(answer.QuerySelector(".why")), StringComparison.Ordinal);
        Assert.Contains("Which way round flange inboard", Text(answer.QuerySelector(".at-hand")), StringComparison.Ordinal);
    }

    [Fact]
    public void Kept_samples_are_shown_and_never_counted()
    {
        var house = Text(Page("tarrock-a1/head--roller-bearing-front").QuerySelector(".best .at-hand"));
        Assert.Contains("in idle unit spare-head", house, StringComparison.Ordinal);
        Assert.Contains("1 in bag b-2, B4, sample (not for fitting)", house, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_without_an_answer_says_so_first_and_what_would_change_that()
    {
        var page = Page("tarrock-a1/head--switch");
        Assert.Contains("Only the maker’s document counts here", Text(page.QuerySelector(".safety")), StringComparison.Ordinal);
        var answer = page.QuerySelector(".answer")!;
        Assert.Equal("No part is accepted here: the maker's document names none.", Text(answer.QuerySelector(".none")));
        Assert.Contains("What would make an answer", Text(answer), StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_that_depends_on_the_machine_is_given_machine_by_machine()
    {
        var answer = Page("tarrock-a1/head--lamp").QuerySelector(".answer")!;
        Assert.Equal("It depends on the machine.", Text(answer.QuerySelector(".none")));
        var machines = answer.QuerySelectorAll(".machines > li").Select(Text).ToList();
        Assert.Contains("Old folder A1, serial 1200, 230 V HA-20 documented", machines[0], StringComparison.Ordinal);
        var roller = Page("tarrock-a1/head--roller").QuerySelectorAll(".machines > li").Select(Text).ToList();
        Assert.Contains("HA-8", roller[0], StringComparison.Ordinal);
    }

    [Fact]
    public void What_contradicts_and_what_tells_it_apart_stand_with_the_evidence()
    {
        var page = Page("tarrock-a1/head--roller-bearing-front");
        Assert.Contains("Equally strong yes and no", Text(page.QuerySelector("[aria-labelledby=disputed]")), StringComparison.Ordinal);
        var evidence = Text(page.QuerySelector(".evidence"));
        Assert.Contains("What tells yes and no apart: date (yes until 2026-01-05, no since 2026-01-06).", evidence, StringComparison.Ordinal);
        Assert.Contains("fits with change", evidence, StringComparison.Ordinal);
        Assert.Contains("in Old folder, neighbours undamaged, only for model A1, serial 200 or later, changed: collar turned down", evidence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_taken_back_stays_struck_with_the_reason()
    {
        var struck = Page("tarrock-a1/head--roller-bearing-rear").QuerySelector(".evidence .struck")!;
        Assert.NotNull(struck.QuerySelector("s"));
        Assert.Contains("Taken back by A. Reed on 2026-01-09: It was the other bag.", Text(struck), StringComparison.Ordinal);
        var claim = Parse("claims.html").GetElementById("r-2026-01-08-ferry-lane-dddd")!;
        Assert.Contains("Taken back by A. Reed", Text(claim), StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_that_nobody_knows_stay_visible() =>
        Assert.Contains(Page("tarrock-a1/head--roller-bearing-front").QuerySelectorAll("table.sizes .unknown"), c => Text(c) == "unknown");

    [Fact]
    public void A_library_in_inches_shows_inches()
    {
        var library = SmallLibrary.Read();
        var inches = new Library(library.Card with { Inches = true }, library.Records.Values.Where(r => r is not LibraryRecord));
        var page = new HtmlParser().ParseDocument(SmallLibrary.Render(inches)["parts/brg-a.html"].AsText());
        var bore = page.QuerySelectorAll("table.sizes tbody tr").First(r => Text(r).StartsWith("bore", StringComparison.Ordinal));
        Assert.Equal("bore 0.4724 ± 0.0004 in must match", Text(bore));
        Assert.Contains("⌀0.4724", page.QuerySelector(".sketch svg")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("brg-a", "⌀12 ⌀28 8")]
    [InlineData("slv-a", "⌀20 ⌀24 12")]
    [InlineData("rol-a", "⌀10 ⌀30 320")]
    [InlineData("gear-a", "⌀10 8")]
    [InlineData("lmp-a", "310 350")]
    [InlineData("rol-b", null)]
    public void A_sketch_carries_the_sizes_on_record(string part, string? sizes)
    {
        var texts = Parse($"parts/{part}.html").QuerySelectorAll(".sketch svg text").Select(t => t.TextContent).ToList();
        Assert.Equal(sizes, texts.Count == 0 ? null : string.Join(' ', texts));
    }

    [Fact]
    public void Pictures_come_along_and_one_that_is_gone_leaves_its_words()
    {
        var figures = Parse("parts/brg-a.html").QuerySelectorAll("figure:not(.sketch)");
        Assert.Equal(["Flange", "Shields"], figures.Select(Text));
        var image = figures[0].QuerySelector("img")!;
        Assert.Equal("Flange", image.GetAttribute("alt"));
        Assert.Equal(File.ReadAllBytes(Path.Combine(SmallLibrary.Folder, "pictures", "flange.png")), Site[image.GetAttribute("src")!["../".Length..]].Content.ToArray());
        Assert.Null(figures[1].QuerySelector("img"));
        Assert.Equal("The flange from the side", Parse("notes/bearings.html").QuerySelector(".prose img")!.GetAttribute("alt"));
        Assert.Null(ContentPictures.In(SmallLibrary.Folder)("../PositionPageTests.cs"));
    }

    [Fact]
    public void Everything_that_can_be_looked_up_has_its_page()
    {
        var library = SmallLibrary.Read();
        var entries = LookupEntries.Of(library, new PageMap(library)).ToList();
        foreach (var entry in entries)
        {
            var parts = entry.Page.Split('#');
            Assert.True(Site.ContainsKey(parts[0]), entry.Page);
            if (parts.Length > 1) Assert.NotNull(Parse(parts[0]).GetElementById(parts[1]));
        }
        Assert.Equal(
            ["assembly", "bag", "calculator", "family", "machine", "note", "part", "position", "question", "repair", "source", "symptom", "unit"],
            entries.Select(e => e.Type).Distinct().Order(StringComparer.Ordinal));
    }

    private static IDocument Page(string position) => Parse($"positions/{position}.html");

    private static IDocument Parse(string path) => new HtmlParser().ParseDocument(Site[path].AsText());

    // The texts of an element, set apart as the style sheet sets them apart.
    private static string Text(IElement? element) => string.Join(' ', (element?.Descendants<IText>() ?? [])
        .SelectMany(t => t.Data.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries))).Replace(" ,", ",", StringComparison.Ordinal);
}

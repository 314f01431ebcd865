using System.Text.RegularExpressions;
using Crossref.Browser.Tests.Tabs;
using Crossref.Core.Lookup;
using Crossref.Core.Tests.Lookup.AtSize;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Lookup;

/// <summary>The lookup over 20,000 parts, too many to be loaded whole: every query reads its shards from files.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class LookupAtSizeTests(ChromiumFixture chromium, LargeSite large) : IClassFixture<LargeSite>
{
    [Fact]
    public async Task Script_and_command_line_answer_500_mixed_queries_alike()
    {
        var page = await OpenAsync();
        var watch = new PageWatch(page);
        var asked = LargeQueries.Of(large.Entries, 504, 40);
        LookupQuery[] queries = [.. asked.Select(one => one.Query)];
        var expected = ReaderPair.Answers(large.Reader, queries);
        Assert.Equal(expected, await ReaderPair.ScriptAnswersAsync(new ChromiumTab(page), queries, wholeLoad: false));

        Assert.False(await page.EvaluateAsync<bool>("async () => (await crossrefLookup.open('../')).isSmall"));
        Assert.True(large.Site.Files.Count > 100, "there must be more shards than the script keeps");
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
        // Every sort of query finds something, and every tier is among the hits.
        var answered = asked.Zip(expected).Where(pair => pair.Second.Count > 0).Select(pair => pair.First.Sort).ToList();
        Assert.Equal(LargeQueries.Names.Order(StringComparer.Ordinal), answered.Distinct().Order(StringComparer.Ordinal));
        Assert.InRange(answered.Count, 450, 504);
        Assert.Equal(Enumerable.Range(0, 10), queries.SelectMany(large.Reader.Find).Select(hit => LookupTier.Of(hit.Score)).Distinct().Order());
    }

    [Fact]
    public async Task A_scanned_number_opens_its_part()
    {
        var page = await OpenAsync();
        foreach (var part in large.Entries.Take(20_000).Where((_, i) => i % 1999 == 7))
        {
            large.Site.Write(part.Page, "<!doctype html><title>A part</title>");
            await page.GotoAsync(large.Site.Page);
            await page.Locator("input").FocusAsync();
            await page.Keyboard.TypeAsync(part.Numbers[0].Text + "\n");
            await Expect(page).ToHaveURLAsync(new Regex(Regex.Escape("/" + part.Page) + "$"));
        }
    }

    [Fact]
    public async Task Filters_are_offered_with_their_counts_and_narrow_what_is_shown()
    {
        var page = await OpenAsync();
        await page.Locator("input").FillAsync("gear");
        foreach (var (filter, value) in new[] { ("type", "part"), ("kind", "gear"), ("family", "velm-a2"), ("standing", "proven") })
        {
            var count = large.Reader.FilterValues.Single(offered => (offered.Filter, offered.Value) == (filter, value)).Count;
            await page.Locator($"select[name={filter}]").SelectOptionAsync(new SelectOptionValue { Label = $"{value} ({count})" });
        }

        var hits = large.Reader.Find(new LookupQuery("gear") { Limit = 20, Type = "part", Kind = "gear", Family = "velm-a2", Standing = "proven" });
        Assert.InRange(hits.Count, 3, 19);
        await Expect(page.Locator(".lookup-hit a")).ToHaveTextAsync(hits.Select(hit => hit.Title));
        await Expect(page.Locator(".lookup-status")).ToHaveTextAsync($"{hits.Count} hits.");
    }

    private async Task<IPage> OpenAsync()
    {
        var page = await chromium.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        await page.GotoAsync(large.Site.Page);
        return page;
    }
}

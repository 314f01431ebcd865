using System.Text.RegularExpressions;
using Crossref.Core.Lookup;
using Crossref.Core.Tests.Lookup;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Lookup;

/// <summary>The lookup box under a person's and a scanner's keys.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class LookupBoxTests(ChromiumFixture chromium) : IDisposable
{
    private readonly LookupSite _site = MakeSite();

    public void Dispose() => _site.Dispose();

    [Fact]
    public async Task Typing_shows_hits_with_their_reasons_and_says_how_many()
    {
        var page = await OpenAsync();
        await page.Keyboard.PressAsync("/");
        await page.Keyboard.TypeAsync("velm 0903");
        await Expect(page.Locator(".lookup-status")).ToHaveTextAsync("1 hit.");
        var hit = page.Locator(".lookup-hit");
        await Expect(hit.Locator("a")).ToHaveTextAsync("Bearing, fold roller");
        await Expect(hit.Locator("a")).ToHaveAttributeAsync("href", "../parts/brg-os-1203.html");
        await Expect(hit.Locator(".lookup-why")).ToHaveTextAsync("VM-0903, Velm's number for it, contains 0903; word: velm");
        await Expect(hit.Locator(".lookup-type")).ToHaveTextAsync("part");
        await Expect(hit.Locator(".lookup-detail")).ToHaveTextAsync("12 × 28 × 8 mm");
        await Expect(hit.Locator(".lookup-standing")).ToHaveTextAsync("documented");
        Assert.EndsWith("#q=velm+0903", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Arrows_walk_and_escape_goes_back_and_clears()
    {
        var page = await OpenAsync();
        var input = page.Locator("input");
        await input.FillAsync("bearing");
        await Expect(page.Locator(".lookup-hit a")).ToHaveCountAsync(5);
        await input.PressAsync("ArrowDown");
        await Expect(page.Locator("a").First).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(page.Locator("a").Nth(1)).ToBeFocusedAsync();
        await Expect(page.Locator("a[tabindex='0']")).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("End");
        await Expect(page.Locator("a").Last).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Home");
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(input).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Escape");
        await Expect(input).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Escape");
        await Expect(input).ToHaveValueAsync("");
        await Expect(page.Locator(".lookup-hit")).ToHaveCountAsync(0);
        await Expect(page.Locator(".lookup-status")).ToHaveTextAsync("");
        Assert.DoesNotContain("#", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_scanners_line_opens_the_exact_hit_even_before_results_arrive()
    {
        var page = await OpenAsync();
        await page.Locator("input").FocusAsync();
        await page.EvaluateAsync(
            """
            () => { // a whole line within one task: no answer can have arrived
              const input = document.querySelector("input");
              for (const c of "OS-1203-02") { input.value += c; input.dispatchEvent(new Event("input", { bubbles: true })); }
              input.form.requestSubmit();
            }
            """);
        await Expect(page).ToHaveURLAsync(new Regex(@"/parts/brg-os-1203\.html$"));
    }

    [Fact]
    public async Task Enter_on_anything_less_than_exact_goes_to_the_first_hit_and_enter_again_opens_it()
    {
        var page = await OpenAsync();
        await page.Locator("input").FillAsync("OS-1203-03");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("a").First).ToBeFocusedAsync();
        Assert.Contains("lookup.html", page.Url, StringComparison.Ordinal);
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(new Regex(@"/parts/brg-os-1203\.html$"));
        await page.GoBackAsync();
        await Expect(page.Locator("input")).ToHaveValueAsync("OS-1203-03");
        await Expect(page.Locator(".lookup-hit")).Not.ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_designation_that_two_parts_share_opens_neither()
    {
        var page = await OpenAsync();
        await page.Locator("input").FillAsync("6001-2RS");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("a").First).ToBeFocusedAsync();
        Assert.Contains("lookup.html", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_line_scanned_on_a_result_begins_a_new_query()
    {
        var page = await OpenAsync();
        await page.Locator("input").FillAsync("6001-2RS");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("a").First).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("VM-0110\n");
        await Expect(page).ToHaveURLAsync(new Regex(@"/parts/clt-vm-0110\.html$"));
    }

    [Fact]
    public async Task Filters_narrow_and_live_in_the_address()
    {
        var page = await OpenAsync("#q=bearing&type=position");
        await Expect(page.Locator(".lookup-hit a")).ToHaveTextAsync("Second fold roller bearing, rear side");
        await Expect(page.Locator("select[name=type]")).ToHaveValueAsync("position");
        await page.Locator("select[name=type]").SelectOptionAsync("");
        await Expect(page.Locator(".lookup-hit")).ToHaveCountAsync(5);
        Assert.EndsWith("#q=bearing", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_hits_come_on_demand()
    {
        using var site = new LookupSite(SampleLibrary.Random(300, 31));
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(site.Page);
        await page.Locator("input").FillAsync("fold");
        await Expect(page.Locator(".lookup-status")).ToHaveTextAsync("The 20 best hits.");
        await page.Locator(".lookup-more").ClickAsync();
        await Expect(page.Locator("a").Nth(20)).ToBeFocusedAsync();
        await Expect(page.Locator(".lookup-more")).ToBeHiddenAsync();
        await page.Locator("input").FillAsync("fold narrow");
        await Expect(page.Locator(".lookup-hit")).Not.ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Markup_in_data_is_shown_as_text_and_a_page_stays_a_relative_address()
    {
        var page = await OpenAsync();
        await page.Locator("input").FillAsync("hostile");
        await Expect(page.Locator(".lookup-hit a")).ToHaveTextAsync("<img src=x onerror=alert(1)> hostile");
        Assert.Equal(0, await page.Locator("img").CountAsync());
        await Expect(page.Locator(".lookup-hit a")).ToHaveAttributeAsync("href", "../javascript:alert(1)");
    }

    [Fact]
    public async Task An_idle_page_of_a_small_library_loads_the_index_whole()
    {
        using var site = new LookupSite(SampleLibrary.Bench, preload: "on");
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        await page.GotoAsync(site.Page);
        await Expect(page.Locator("select[name=kind]")).ToBeVisibleAsync();
        await page.WaitForFunctionAsync("() => document.querySelectorAll('script').length === 4");
        for (var i = 0; i < 1000 && !site.Files.All(file => watch.Files.Contains(site.Address(file.Path))); i++)
        {
            await Task.Delay(50);
        }

        Assert.All(site.Files, file => Assert.Contains(site.Address(file.Path), watch.Files));
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
    }

    [Theory]
    [InlineData("crossrefLookup(\"index\",\"crossref-lookup\\t99\\t0\\t0\");\n", "The lookup index has format 99, and this reader knows format 1")]
    [InlineData("crossrefLookup(\"other\",\"\");\n", "The file lookup/index.js is missing or damaged")]
    public async Task What_cannot_be_read_is_said_in_words(string first, string words)
    {
        _site.Write("lookup/index.js", first);
        var page = await OpenAsync();
        await page.Locator("input").FillAsync("bearing");
        await Expect(page.Locator(".lookup-status")).ToContainTextAsync(words);
        await Expect(page.Locator("form")).ToHaveClassAsync("lookup lookup-failed");
    }

    [Fact]
    public async Task Without_scripts_the_box_is_not_there()
    {
        var page = await chromium.NewPageAsync(new() { JavaScriptEnabled = false });
        await page.GotoAsync(_site.Page);
        await Expect(page.Locator("form")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task The_box_and_its_results_are_accessible()
    {
        var page = await OpenAsync();
        await page.Locator("input").FillAsync("bearing");
        await Expect(page.Locator(".lookup-hit a")).ToHaveCountAsync(5);
        var result = await page.RunAxe();
        Assert.Empty(result.Violations.Select(violation => $"{violation.Id}: {violation.Help}"));
    }

    private async Task<IPage> OpenAsync(string fragment = "")
    {
        var page = await chromium.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        await page.GotoAsync(_site.Page + fragment);
        return page;
    }

    private static LookupSite MakeSite()
    {
        LookupEntry hostile = new()
        {
            Type = "note",
            Id = "hostile",
            Title = "<img src=x onerror=alert(1)> hostile",
            Page = "javascript:alert(1)",
        };
        var site = new LookupSite([.. SampleLibrary.Bench, hostile]);
        foreach (var entry in SampleLibrary.Bench.Where(entry => entry.Type == "part"))
        {
            site.Write(entry.Page, "<!doctype html><title>A part</title>");
        }

        return site;
    }
}

using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Demo;

/// <summary>The lookup box, while it is empty, offers the pages opened last on this PC.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class RecentlyViewedTests(ChromiumFixture chromium, DemoSite site) : IClassFixture<DemoSite>
{
    private const string Key = "crossref:ferry-lane:recent";
    private const string Deep = "positions/ostrin-f2/fold-head--roller-2-bearing-rear.html";
    private const string Part = "parts/brg-os-1203.html";

    [Fact]
    public async Task The_first_page_lists_what_was_opened_newest_first_and_leads_back()
    {
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        await page.GotoAsync(site.Address("index.html"));
        await Expect(page.Locator(".lookup-recent")).ToBeHiddenAsync();
        var titles = await OpenAsync(page, Deep, "shelf.html", Part, Deep, "index.html");
        var links = page.Locator(".lookup-recent a");
        await Expect(links).ToHaveTextAsync([titles[3], titles[2], titles[1]]);
        await links.First.ClickAsync();
        await Expect(page).ToHaveURLAsync(site.Address(Deep));
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
    }

    [Fact]
    public async Task Any_page_lists_the_others_when_its_box_is_entered_at_whatever_depth()
    {
        var page = await chromium.NewPageAsync();
        var titles = await OpenAsync(page, Part, "shelf.html", Deep);
        var links = page.Locator(".lookup-recent a");
        await Expect(links.First).ToBeHiddenAsync();
        await page.Keyboard.PressAsync("/");
        await Expect(links).ToHaveTextAsync([titles[1], titles[0]]);
        await Expect(links.First).ToBeVisibleAsync();
        await Expect(links.Last).ToHaveAttributeAsync("href", "../../" + Part);
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(links.Last).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(site.Address(Part));
    }

    [Fact]
    public async Task It_makes_way_for_results_comes_back_and_can_be_sent_away()
    {
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, Part, Deep);
        var (input, recent) = (page.Locator(".lookup-text"), page.Locator(".lookup-recent"));
        await input.FillAsync("squeal");
        await Expect(recent).ToBeHiddenAsync();
        await Expect(page.Locator(".lookup-hit")).Not.ToHaveCountAsync(0);
        await input.PressAsync("Escape");
        await Expect(recent).ToBeVisibleAsync();
        await Expect(page.Locator(".lookup-hit")).ToHaveCountAsync(0);
        await input.PressAsync("Escape");
        await Expect(recent).ToBeHiddenAsync();
        await Expect(input).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Eight_pages_are_kept()
    {
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, [.. site.Pages.Where(path => path.StartsWith("parts/", StringComparison.Ordinal)).Take(10), "index.html"]);
        await Expect(page.Locator(".lookup-recent a")).ToHaveCountAsync(8);
    }

    [Fact]
    public async Task Forgetting_takes_this_librarys_pages_and_nothing_else()
    {
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, Part, "index.html");
        await page.EvaluateAsync("() => localStorage.setItem('crossref:another:recent', 'kept')");
        await page.Locator(".lookup-forget").ClickAsync();
        await Expect(page.Locator(".lookup-recent")).ToBeHiddenAsync();
        await Expect(page.Locator(".lookup-text")).ToBeFocusedAsync();
        Assert.Equal(["crossref:another:recent"], await page.EvaluateAsync<string[]>("() => Object.keys(localStorage)"));
        await page.ReloadAsync();
        await Expect(page.Locator(".lookup-recent")).ToBeHiddenAsync();
    }

    [Theory]
    [InlineData("no JSON", 0)]
    [InlineData("{\"page\":\"shelf.html\",\"title\":\"Stock\"}", 0)]
    [InlineData("[null,7,\"shelf.html\",{\"page\":3,\"title\":\"x\"},{\"page\":\"shelf.html\",\"title\":\" \"}]", 0)]
    [InlineData("[{\"page\":\"javascript:alert(1)//.html\",\"title\":\"x\"}]", 0)]
    [InlineData("[{\"page\":\"https://example.invalid/a.html\",\"title\":\"x\"},{\"page\":\"//example.invalid/a.html\",\"title\":\"x\"}]", 0)]
    [InlineData("[{\"page\":\"../../up.html\",\"title\":\"x\"},{\"page\":\"a/%2e%2e/..\\\\../up.html\",\"title\":\"x\"}]", 0)]
    [InlineData("[{\"page\":\"../up.html\",\"title\":\"x\"},{\"page\":\"shelf.html#there\",\"title\":\"<img src=x> Stock\"}]", 1)]
    public async Task What_another_page_of_the_machine_stored_is_not_trusted(string stored, int shown)
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(site.Address("index.html"));
        await page.EvaluateAsync("([key, stored]) => localStorage.setItem(key, stored)", new[] { Key, stored });
        var watch = new PageWatch(page);
        await page.ReloadAsync();
        await page.Locator(".lookup-text").FocusAsync();
        var links = page.Locator(".lookup-recent a");
        await Expect(links).ToHaveCountAsync(shown);
        if (shown == 1)
        {
            await Expect(links).ToHaveTextAsync("<img src=x> Stock");
            await Expect(links).ToHaveAttributeAsync("href", "./shelf.html");
        }

        await OpenAsync(page, Part, "index.html");
        await Expect(links).ToHaveCountAsync(shown + 1);
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
    }

    [Fact]
    public async Task A_browser_that_stores_nothing_still_looks_up()
    {
        var page = await chromium.NewPageAsync();
        await page.AddInitScriptAsync("Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });");
        var watch = new PageWatch(page);
        await OpenAsync(page, Part, "index.html");
        await Expect(page.Locator(".lookup-recent")).ToBeHiddenAsync();
        await page.Locator(".lookup-text").FillAsync("OS-1203-02");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(site.Address(Part));
        Assert.Empty(watch.Complaints);
    }

    [Fact]
    public async Task Where_each_file_has_a_store_of_its_own_a_page_lists_what_was_opened_from_it()
    {
        var page = await chromium.NewPageAsync();
        // The store is asked for only when the page does: one taken before the document is settled may stay empty.
        await page.AddInitScriptAsync(
            """
            const { get } = Object.getOwnPropertyDescriptor(window, "localStorage");
            const shared = () => get.call(window);
            const own = (key) => `${location.pathname} ${key}`;
            Object.defineProperty(window, "localStorage", { value: {
              getItem: (key) => shared().getItem(own(key)), setItem: (key, value) => shared().setItem(own(key), value),
            } });
            """);
        await OpenAsync(page, Deep, "index.html");
        await Expect(page.Locator(".lookup-recent")).ToBeHiddenAsync();
        await page.Locator(".lookup-text").FillAsync("OS-1203-02");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(site.Address(Part));
        await page.GotoAsync(site.Address("index.html"));
        await Expect(page.Locator(".lookup-recent a")).ToHaveCountAsync(1);
        await page.Locator(".lookup-text").FillAsync("squeal");
        await Expect(page.Locator(".lookup-hit a").First).ToHaveTextAsync("Squeal");
        await page.Locator(".lookup-hit a").First.ClickAsync();
        await Expect(page).ToHaveURLAsync(site.Address("symptoms/squeal.html"));
        await page.GotoAsync(site.Address("index.html"));
        await Expect(page.Locator(".lookup-recent a").First).ToHaveTextAsync("Squeal");
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData(Deep)]
    public async Task The_list_is_accessible(string path)
    {
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, Part, "shelf.html", path);
        await page.Keyboard.PressAsync("/");
        await Expect(page.Locator(".lookup-recent")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Recently viewed" })).ToHaveCountAsync(1);
        var result = await page.RunAxe();
        Assert.Empty(result.Violations.Select(violation => $"{violation.Id}: {violation.Help}"));
    }

    // Opens pages one after the other and gives their headings.
    private async Task<List<string>> OpenAsync(IPage page, params string[] paths)
    {
        var titles = new List<string>();
        foreach (var path in paths)
        {
            await page.GotoAsync(site.Address(path));
            titles.Add((await page.Locator("h1").InnerTextAsync()).Trim());
        }

        return titles;
    }
}

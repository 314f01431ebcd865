using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Demo;

/// <summary>What a person does with the built site: looks things up, and follows a repair from the symptom to the bag.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class DemoSiteTests(ChromiumFixture chromium, DemoSite site) : IClassFixture<DemoSite>
{
    [Theory]
    [InlineData("an exact number", "OS-1203-02", "Bearing, fold roller", "OS-1203-02")]
    [InlineData("an earlier number", "OS-1203-01", "Bearing, fold roller", "earlier number")]
    [InlineData("a part of a number", "1203-0", "Bearing, fold roller", "contains")]
    [InlineData("wrong separators", "os.1203/02", "Bearing, fold roller", "OS-1203-02")]
    [InlineData("a typo", "OS-1293-02", "Bearing, fold roller", "one character")]
    [InlineData("O for 0", "OS-12O3-O2", "Bearing, fold roller", "OS-1203-02")]
    [InlineData("words", "second roller bearing rear", "Second fold roller bearing, rear side", "words")]
    [InlineData("a symptom", "squeal", "Squeal", "squeal")]
    public async Task Looking_up(string what, string typed, string title, string why)
    {
        Assert.NotEmpty(what);
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        await page.GotoAsync(site.Address("index.html"));
        await page.Keyboard.PressAsync("/");
        await page.Keyboard.TypeAsync(typed);
        var hit = page.Locator(".lookup-hit").First;
        await Expect(hit).ToContainTextAsync(title, new() { IgnoreCase = true });
        await Expect(hit).ToContainTextAsync(why, new() { IgnoreCase = true });
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
    }

    [Fact]
    public async Task A_repair_from_the_symptom_to_the_bag()
    {
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        await page.GotoAsync(site.Address("index.html"));
        await page.Keyboard.PressAsync("/");
        await page.Keyboard.TypeAsync("squeal\n");
        await Expect(page.Locator("h1")).ToContainTextAsync("Squeal");
        await page.Locator("main").GetByRole(AriaRole.Link, new() { Name = "Second fold roller bearing, rear side" }).First.ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync("Second fold roller bearing, rear side");
        await page.Locator("main").GetByRole(AriaRole.Link, new() { Name = "b-2025-120" }).First.ClickAsync();
        await Expect(page.Locator("#r-b-2025-120")).ToContainTextAsync("B4");
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
    }

    [Fact]
    public async Task Every_page_opens_without_the_network_and_without_a_complaint()
    {
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        foreach (var path in site.Pages)
        {
            await page.GotoAsync(site.Address(path));
            Assert.True(await page.Locator("h1").CountAsync() == 1, path);
        }
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
    }

    [Fact]
    public async Task The_watch_would_see_a_request_and_a_complaint()
    {
        var folder = Directory.CreateTempSubdirectory("positive-control");
        var file = Path.Combine(folder.FullName, "bad.html");
        await File.WriteAllTextAsync(file, "<!doctype html><title>x</title><h1>x</h1><img src='http://127.0.0.1:9/x.png'><script>null.x</script>");
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        Assert.Contains("http://127.0.0.1:9/x.png", watch.NetworkRequests);
        Assert.NotEmpty(watch.Complaints);
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task The_content_security_policy_stops_what_our_pages_must_not_do()
    {
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        await page.GotoAsync(site.Address("index.html"));
        await page.EvaluateAsync("() => { const s = document.createElement('script'); s.textContent = 'window.ran = true'; document.body.append(s); const i = new Image(); i.src = 'http://127.0.0.1:9/x.png'; document.body.append(i); }");
        Assert.Null(await page.EvaluateAsync<bool?>("() => window.ran ?? null"));
        Assert.NotEmpty(watch.Complaints);
    }
}

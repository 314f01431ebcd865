using Crossref.Site.Tests.Hostile;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Hostile;

/// <summary>Hostile records in a real browser: nothing runs, nothing is asked for, nothing breaks the page.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class HostileSiteTests(ChromiumFixture chromium, HostileSite site) : IClassFixture<HostileSite>
{
    private const string Canary = "String(globalThis.canary)";

    [Fact]
    public async Task Nothing_runs_on_any_page_and_none_scrolls_sideways()
    {
        var (page, watch, dialogs) = await Open();
        var found = new List<string>();
        foreach (var path in site.Pages)
        {
            await page.GotoAsync(site.Address(path));
            if (await page.EvaluateAsync<string>(Canary) != "undefined") found.Add($"{path} ran something");
            var wide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            if (wide > 360) found.Add($"{path} is {wide} wide");
        }
        Assert.True(found.Count == 0, string.Join('\n', found));
        Assert.True(site.Pages.Count > 30);
        Assert.Empty(dialogs);
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Lookup_shows_hostile_text_as_text()
    {
        var (page, watch, dialogs) = await Open();
        await page.GotoAsync(site.Address("index.html"));
        await page.Keyboard.PressAsync("/");
        await page.Keyboard.TypeAsync("canary onerror");
        await Expect(page.Locator(".lookup-hit").First).ToContainTextAsync("<script>globalThis.canary = 1</script>");
        Assert.Equal(0, await page.Locator(".lookup-panel, .lookup-results").Locator("script, img, svg, iframe, [onerror], [onload], [style]").CountAsync());
        var links = await page.Locator(".lookup-hit a").EvaluateAllAsync<string[]>("all => all.map((a) => a.getAttribute('href'))");
        Assert.NotEmpty(links);
        Assert.All(links, l => Assert.Matches("^\\./[a-z0-9/-]+\\.html(#[a-z0-9-]+)?$", l));
        Assert.Equal("undefined", await page.EvaluateAsync<string>(Canary));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 360);
        // A state that somebody made up in an address is text as well.
        await page.GotoAsync(site.Address("index.html") + "#q=%3Cimg%20src%3Dx%20onerror%3D%22globalThis.canary%3D1%22%3E&type=%3Cscript%3E");
        await Expect(page.Locator(".lookup-text")).ToHaveValueAsync("<img src=x onerror=\"globalThis.canary=1\">");
        Assert.Equal("undefined", await page.EvaluateAsync<string>(Canary));
        Assert.Empty(dialogs);
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_canary_sings_where_neither_escaping_nor_policy_protects()
    {
        var html = "<!doctype html><title>x</title><main>" + HostileText.Shown[0] + HostileText.Shown[1] + "</main>";
        var (page, watch, dialogs) = await Open();
        await page.GotoAsync(site.Add("control/bare.html", html + "<script>alert(1)</script><img src='http://outside.invalid/x'><p style='width:900px'>x</p>"));
        await page.WaitForFunctionAsync("globalThis.canary === 1");
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") > 360);
        Assert.NotEmpty(dialogs);
        Assert.NotEmpty(watch.NetworkRequests);
        await page.GotoAsync(site.Add("control/policy.html", "<meta http-equiv=Content-Security-Policy content=\"default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:\">" + html));
        Assert.Equal("undefined", await page.EvaluateAsync<string>(Canary));
        Assert.NotEmpty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    private async Task<(IPage Page, PageWatch Watch, List<string> Dialogs)> Open()
    {
        var page = await chromium.NewPageAsync(new() { ViewportSize = new() { Width = 360, Height = 800 } });
        var dialogs = new List<string>();
        page.Dialog += async (_, dialog) =>
        {
            dialogs.Add(dialog.Message);
            await dialog.DismissAsync();
        };
        return (page, new PageWatch(page), dialogs);
    }
}

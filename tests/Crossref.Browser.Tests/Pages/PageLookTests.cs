using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Crossref.Browser.Tests.Pages;

[Collection(ChromiumFixture.Collection)]
public sealed class PageLookTests(ChromiumFixture chromium, RenderedSite site) : IClassFixture<RenderedSite>
{
    internal static readonly AxeRunOptions Rules = new() { RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] } };

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Pages_can_be_read_by_everybody(ColorScheme scheme)
    {
        var page = await chromium.NewPageAsync(new() { ColorScheme = scheme, BypassCSP = true });
        var found = new List<string>();
        foreach (var kind in RenderedSite.Kinds)
        {
            await page.GotoAsync(site.Address(kind));
            foreach (var violation in (await page.RunAxe(Rules)).Violations)
                found.Add($"{kind}: {violation.Id}, {violation.Help}: {string.Join(" | ", violation.Nodes.Select(n => n.Html).Take(3))}");
        }
        Assert.True(found.Count == 0, string.Join('\n', found));
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1024)]
    [InlineData(1920)]
    public async Task Pages_never_scroll_sideways(int width)
    {
        var page = await chromium.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = 800 } });
        var found = new List<string>();
        foreach (var kind in RenderedSite.Kinds)
        {
            await page.GotoAsync(site.Address(kind));
            var wide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            if (wide > width) found.Add($"{kind} is {wide} wide");
        }
        Assert.True(found.Count == 0, string.Join('\n', found));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Pages_ask_no_network_and_complain_of_nothing()
    {
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        foreach (var kind in RenderedSite.Kinds) await page.GotoAsync(site.Address(kind), new() { WaitUntil = WaitUntilState.NetworkIdle });
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Without_scripts_only_looking_up_is_missing()
    {
        var page = await chromium.NewPageAsync(new() { JavaScriptEnabled = false });
        await page.GotoAsync(site.Address("index.html"));
        Assert.False(await page.Locator("form.lookup").IsVisibleAsync());
        Assert.True(await page.Locator(".no-script").IsVisibleAsync());
        await page.GetByText("More", new() { Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "What the words mean" }).ClickAsync();
        Assert.Equal("What the words mean", await page.Locator("h1").TextContentAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_number_typed_whole_opens_its_part_from_any_depth()
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(site.Address("positions/tarrock-a1/head--lamp.html"));
        await page.Keyboard.PressAsync("/");
        await page.Keyboard.TypeAsync("or2");
        await page.Locator(".lookup-hit a").First.WaitForAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex(@"/parts/brg-b\.html$"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_keyboard_reaches_the_page_past_its_head()
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(site.Address("parts/brg-a.html"));
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal("Skip to the page", await page.EvaluateAsync<string>("document.activeElement.textContent"));
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("sheet", await page.EvaluateAsync<string>("document.activeElement.id"));
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_position_prints_without_what_only_a_screen_can_use(string format)
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(site.Address("positions/tarrock-a1/head--roller-bearing-front.html"));
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.False(await page.Locator(".top").IsVisibleAsync());
        Assert.True(await page.Locator(".number").IsVisibleAsync());
        Assert.True(await page.Locator(".title-block").IsVisibleAsync());
        Assert.Equal("rgb(255, 255, 255)", await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.NotEmpty(await page.PdfAsync(new() { Format = format }));
        await page.Context.CloseAsync();
    }
}

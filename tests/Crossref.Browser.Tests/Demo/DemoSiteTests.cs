using Crossref.Browser.Tests.Tabs;

namespace Crossref.Browser.Tests.Demo;

/// <summary>What a person does with the built site: looks things up, and follows a repair from the symptom to the bag.</summary>
public abstract class DemoSiteTests(IBrowser browser, DemoSite site) : IClassFixture<DemoSite>
{
    private const string FirstHit = ".lookup-hit";

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
        var tab = await OpenAsync("index.html");
        await LookUpAsync(tab, typed);
        await tab.SaysAsync(FirstHit, title);
        await tab.SaysAsync(FirstHit, why);
        tab.WasQuiet();
    }

    [Fact]
    public async Task A_repair_from_the_symptom_to_the_bag()
    {
        var tab = await OpenAsync("index.html");
        await LookUpAsync(tab, "squeal");
        await tab.PressAsync("Enter");
        await tab.SaysAsync("h1", "Squeal");
        await tab.ClickAsync("main a[href$='--roller-2-bearing-rear.html']");
        await tab.SaysAsync("h1", "Second fold roller bearing, rear side");
        await tab.ClickAsync("main a[href$='#r-b-2025-120']");
        await tab.SaysAsync("#r-b-2025-120:target", "B4");
        tab.WasQuiet();
    }

    [Fact]
    public async Task From_marks_that_repeat_to_the_place_that_turns_so()
    {
        var tab = await OpenAsync("index.html");
        await tab.ClickAsync("#marks-distance");
        await tab.TypeAsync("94.2 +/- 0.5");
        await tab.PressAsync("Enter");
        await tab.SaysAsync(".says", "pressure roller");
        await tab.ClickAsync(".working a[href$='--pressure-roller.html']");
        await tab.SaysAsync("h1", "Pressure roller");
        tab.WasQuiet();
    }

    [Fact]
    public async Task Keys_walk_the_hits_and_a_whole_number_opens_its_part()
    {
        var tab = await OpenAsync("shelf.html");
        await LookUpAsync(tab, "bearing");
        await tab.UntilAsync("document.querySelectorAll('.lookup-hit a').length > 2");
        await tab.PressAsync("ArrowDown");
        await tab.PressAsync("ArrowDown");
        await tab.UntilAsync("document.activeElement === document.querySelectorAll('.lookup-hit a')[1]");
        await tab.PressAsync("ArrowUp");
        await tab.UntilAsync("document.activeElement === document.querySelector('.lookup-hit a')");
        await tab.PressAsync("Escape");
        await tab.UntilAsync("document.activeElement === document.querySelector('input[type=search]') && document.activeElement.value === 'bearing'");
        await tab.PressAsync("Escape");
        await tab.UntilAsync("document.activeElement.value === '' && !document.querySelector('.lookup-hit') && !location.hash");
        await tab.TypeAsync("os 1203 02");
        await tab.PressAsync("Enter");
        await tab.UntilAsync("location.pathname.endsWith('/parts/brg-os-1203.html')");
        tab.WasQuiet();
    }

    [Fact]
    public async Task Enter_on_less_than_a_whole_number_chooses_nothing_and_going_back_finds_the_query_again()
    {
        var tab = await OpenAsync("index.html");
        await LookUpAsync(tab, "OS-1293-02");
        await tab.PressAsync("Enter");
        await tab.UntilAsync("document.activeElement === document.querySelector('.lookup-hit a')");
        await tab.UntilAsync("location.href.endsWith('/index.html#q=OS-1293-02')");
        await tab.PressAsync("Enter");
        await tab.UntilAsync("location.pathname.endsWith('/parts/brg-os-1203.html') && document.readyState === 'complete'");
        await tab.RunAsync("() => { history.back(); return ''; }", "");
        await tab.UntilAsync("location.href.endsWith('/index.html#q=OS-1293-02') && document.querySelector('input[type=search]').value === 'OS-1293-02'");
        await tab.SaysAsync(FirstHit, "Bearing, fold roller");
        tab.WasQuiet();
    }

    [Fact]
    public async Task Filters_live_in_the_address()
    {
        var tab = await OpenAsync("index.html", "#q=bearing&type=position");
        const string types = "[...new Set([...document.querySelectorAll('.lookup-hit')].map((hit) => hit.dataset.type))].join()";
        await tab.UntilAsync($"{types} === 'position' && document.querySelector('select[name=type]').value === 'position'");
        await tab.AskAsync<object>("void document.querySelector('select[name=type]').focus()");
        await tab.PressAsync("p"); // the first type with this letter
        await tab.UntilAsync($"{types} === 'part' && location.hash === '#q=bearing&type=part'");
        await tab.PressAsync("Home");
        await tab.UntilAsync($"{types}.includes(',') && location.hash === '#q=bearing'");
        tab.WasQuiet();
    }

    [Fact]
    public Task Every_page_opens_without_the_network_and_without_a_complaint() => VisitAsync(site.Pages, tabs: 3, async (tab, page) =>
        Assert.True(await tab.AskAsync<int>("document.querySelectorAll('h1').length") == 1, page));

    [Fact]
    public Task Pages_never_scroll_sideways() => VisitAsync(site.PageKinds, tabs: 1, async (tab, page) =>
    {
        foreach (var width in (int[])[360, 1024, 1920])
        {
            await tab.ResizeAsync(width);
            await tab.UntilAsync("innerWidth === it", width);
            Assert.False(await ScrollsSidewaysAsync(tab), $"{page} at {width}");
        }
    });

    [Fact]
    public async Task A_page_that_is_too_wide_is_noticed()
    {
        var tab = await OpenAsync("index.html");
        Assert.False(await ScrollsSidewaysAsync(tab));
        await tab.AskAsync<object>("void (document.querySelector('h1').style.width = '3000px')");
        Assert.True(await ScrollsSidewaysAsync(tab));
    }

    private static Task<bool> ScrollsSidewaysAsync(ITab tab) =>
        tab.AskAsync<bool>("document.documentElement.scrollWidth > document.documentElement.clientWidth");

    // A browser waits more than it works, so a few tabs share the pages. Only the foremost one is laid out without delay.
    private Task VisitAsync(IEnumerable<string> pages, int tabs, Func<ITab, string, Task> look) => Task.WhenAll(
        pages.Index().GroupBy(page => page.Index % tabs, page => page.Item).Select(async share =>
        {
            var tab = await browser.NewTabAsync();
            foreach (var page in share)
            {
                await tab.OpenAsync(site.Address(page));
                await look(tab, page);
            }

            tab.WasQuiet();
        }));

    private async Task<ITab> OpenAsync(string page, string fragment = "")
    {
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(site.Address(page) + fragment);
        return tab;
    }

    private static async Task LookUpAsync(ITab tab, string text)
    {
        await tab.PressAsync("/");
        await tab.TypeAsync(text);
    }
}

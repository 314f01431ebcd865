using Crossref.Browser.Tests.Hostile;
using Crossref.Browser.Tests.Pages;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Recording;

/// <summary>The page for findings in one browser: for everybody, on a phone, by keys alone, and with what may go wrong.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class RecordLookTests(ChromiumFixture chromium, ContentCopy copy, HostileSite hostile) : IClassFixture<ContentCopy>, IClassFixture<HostileSite>
{
    private const string Place = "ostrin-f2/fold-head/roller-2-bearing-rear";
    private const string Whole = $"#at={Place}&machine=folder-1&part=brg-vm-0907&verdict=fits&basis=seated&source=workshop-log&by=M.%20Orr";
    private const string Lamp = "#at=tarrock-t40/fixing/lamp-main&basis=ran&verdict=fits-with-change&source=nobody";

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Every_state_can_be_read_by_everybody_and_fits_a_phone(ColorScheme scheme)
    {
        var page = await chromium.NewPageAsync(new() { ColorScheme = scheme, BypassCSP = true, ViewportSize = new() { Width = 360, Height = 800 } });
        var watch = new PageWatch(page);
        await page.GotoAsync(copy.Address("record.html") + Lamp);
        await LookAsync("linked");
        await SaveAsync(page);
        await Expect(page.Locator(".problem:visible").First).ToBeVisibleAsync();
        await LookAsync("refused");
        await page.Locator("#field-part").FillAsync("0");
        await Expect(page.Locator(".picker-option").First).ToBeVisibleAsync();
        await LookAsync("picking");
        await page.GotoAsync("about:blank");
        await page.GotoAsync(copy.Address("record.html") + Whole);
        await SaveAsync(page);
        await Expect(page.Locator("#saved")).ToBeFocusedAsync();
        await LookAsync("saved");
        await page.GotoAsync(copy.Address($"positions/ostrin-f2/fold-head--roller-2-bearing-rear.html"));
        await Expect(page.Locator(".recorded-here")).ToBeVisibleAsync();
        await LookAsync("pending");
        Assert.Empty(watch.NetworkRequests);
        await page.Context.CloseAsync();

        async Task LookAsync(string state)
        {
            Assert.Empty((await page.RunAxe(PageLookTests.Rules)).Violations.Select(v => $"{state}: {v.Id}, {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html).Take(3))}"));
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 360, state);
        }
    }

    [Fact]
    public async Task A_run_is_counted_as_the_machine_counts()
    {
        var page = await chromium.NewPageAsync();
        var (machine, unit) = (page.Locator("#field-machine"), page.Locator("#field-unit"));
        await page.GotoAsync(copy.Address("record.html") + "#at=ostrin-k1/crease-head/drive-gear&machine=creaser-1&basis=ran");
        await Expect(unit).ToHaveValueAsync("cycles");
        await machine.SelectOptionAsync("folder-1");
        await Expect(unit).ToHaveValueAsync("sheets");
        await page.Locator("#field-count").FillAsync("18000");
        await machine.SelectOptionAsync("creaser-1"); // what somebody counted already stays as it was counted
        await Expect(page.Locator("#field-at-problem")).ToBeHiddenAsync();
        await Expect(unit).ToHaveValueAsync("sheets");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_file_holds_what_is_shown_and_copied()
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(copy.Address("record.html") + Whole);
        var download = await page.RunAndWaitForDownloadAsync(() => SaveAsync(page));
        var shown = await page.Locator(".saved-text").TextContentAsync();
        Assert.Equal(shown, await File.ReadAllTextAsync(await download.PathAsync()));
        Assert.Equal(await page.Locator(".saved-name").TextContentAsync(), download.SuggestedFilename);
        Assert.Matches("^[0-9]{4}-[0-9]{2}-[0-9]{2}-ferry-lane-[a-hjkmnp-z2-9]{4}\\.yaml$", download.SuggestedFilename);
        await page.EvaluateAsync("() => { Object.defineProperty(navigator, 'clipboard', { value: { writeText: async (text) => { window.copied = text; } } }); }");
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy the text" }).ClickAsync();
        await Expect(page.Locator(".copy-says")).ToHaveTextAsync("Copied.");
        Assert.Equal(shown, await page.EvaluateAsync<string>("window.copied"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_same_finding_twice_has_one_id_and_another_one_another()
    {
        var page = await chromium.NewPageAsync();
        var ids = new List<string?>();
        foreach (var state in new[] { Whole, Whole, Whole.Replace("seated", "told", StringComparison.Ordinal) })
        {
            await page.GotoAsync("about:blank");
            await page.GotoAsync(copy.Address("record.html") + state);
            await SaveAsync(page);
            ids.Add(await page.Locator(".saved-name").TextContentAsync());
        }

        Assert.Equal(ids[0], ids[1]);
        Assert.NotEqual(ids[0], ids[2]);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_whole_finding_can_be_recorded_by_keys_alone()
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(copy.Address("record.html"));
        await page.Locator("input[name=kind]").First.FocusAsync();
        foreach (var (field, keys) in new (string, string[])[]
        {
            ("field-machine", ["f"]), ("field-at", ["r", "o", "l", "l", "e", "r", " ", "2", " ", "b", "e", "a", "r", "ArrowDown", "Enter"]),
            ("field-part", ["ArrowDown", "Enter"]), ("verdict", [" "]), ("basis", ["ArrowDown"]), ("field-source", ["ArrowDown", "Enter"]), ("field-by", ["ArrowDown", "Enter"]),
        })
        {
            await page.Keyboard.PressAsync("Tab");
            Assert.Equal(field, await page.EvaluateAsync<string>("document.activeElement.id || document.activeElement.name"));
            foreach (var key in keys) await page.Keyboard.PressAsync(key);
        }

        foreach (var _ in Enumerable.Range(0, 3)) await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#saved")).ToBeFocusedAsync();
        await Expect(page.Locator(".saved-text")).ToContainTextAsync("basis: seated");
        await Expect(page.Locator(".saved-text")).ToContainTextAsync("at: ostrin-f2/fold-head/roller-2-bearing");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Edited_and_saved_again_it_names_the_file_that_it_takes_the_place_of()
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(copy.Address("record.html") + Whole);
        await SaveAsync(page);
        var first = await page.Locator(".saved-name").TextContentAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Record another" }).ClickAsync();
        await Expect(page.Locator("#field-part")).ToHaveValueAsync("");
        await page.Locator(".kept-list button").First.ClickAsync();
        await page.Locator("input[value=does-not-fit]").CheckAsync();
        await SaveAsync(page);
        await Expect(page.Locator(".copy-says")).ToContainTextAsync($"{first}. If that file is in the inbox, delete it there.");
        await Expect(page.Locator(".kept-work")).ToHaveCountAsync(1);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_browser_that_stores_nothing_says_so_and_saves_all_the_same()
    {
        var page = await chromium.NewPageAsync();
        await page.AddInitScriptAsync("Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });");
        var watch = new PageWatch(page);
        await page.GotoAsync(copy.Address("record.html") + Whole);
        await Expect(page.Locator(".storage-says")).ToContainTextAsync("keeps nothing");
        await SaveAsync(page);
        await Expect(page.Locator(".saved-text")).ToContainTextAsync("part: brg-vm-0907");
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("no JSON", 0)]
    [InlineData("{}", 0)]
    [InlineData("[null, 7, {\"key\": 1}, {\"key\":\"1\",\"id\":\"\",\"title\":\"t\",\"text\":\"\",\"fields\":{\"at\":{}}}]", 0)]
    [InlineData("[{\"key\":\"<img src=x>\",\"id\":\"<script>\",\"title\":\"<img src=x onerror=globalThis.canary=1>\",\"text\":\"x\",\"fields\":{\"at\":\"" + Place + "\",\"part\":\"<svg>\",\"kind\":\"<b>\"}}]", 1)]
    public async Task What_another_page_of_the_machine_stored_is_not_trusted(string stored, int shown)
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(copy.Address("index.html"));
        await page.EvaluateAsync("(stored) => localStorage.setItem('crossref:ferry-lane:recorded', stored)", stored);
        var watch = new PageWatch(page);
        await page.GotoAsync(copy.Address("positions/ostrin-f2/fold-head--roller-2-bearing-rear.html"));
        await Expect(page.Locator(".recorded-here li")).ToHaveCountAsync(shown);
        await page.GotoAsync(copy.Address("record.html"));
        await Expect(page.Locator(".kept-work")).ToHaveCountAsync(shown);
        if (shown == 1) await page.Locator(".kept-list button").First.ClickAsync();
        Assert.Equal(0, await page.Locator("main img, main svg, main script").CountAsync());
        Assert.Equal("undefined", await page.EvaluateAsync<string>("String(globalThis.canary)"));
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Hostile_records_are_offered_as_text()
    {
        var page = await chromium.NewPageAsync(new() { ViewportSize = new() { Width = 360, Height = 800 } });
        var watch = new PageWatch(page);
        await page.GotoAsync(hostile.Address("record.html"));
        foreach (var field in new[] { "at", "part", "source", "by" })
        {
            await page.Locator("#field-" + field).FillAsync(field == "by" ? "<script>" : "canary onerror");
            await Expect(page.Locator($"#field-{field}-list .picker-option").First).ToContainTextAsync("<script>globalThis.canary = 1</script>");
            await page.Keyboard.PressAsync("Enter");
        }

        await page.Locator("input[value=fits]").CheckAsync();
        await page.Locator("input[value=told]").CheckAsync();
        await SaveAsync(page);
        await Expect(page.Locator(".saved-text")).ToContainTextAsync("by: \"");
        Assert.Equal(0, await page.Locator("main img, main svg, main script, main iframe, main [onerror]").CountAsync());
        Assert.Equal("undefined", await page.EvaluateAsync<string>("String(globalThis.canary)"));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 360);
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Of_twenty_thousand_parts_a_few_are_offered_and_the_right_one_first()
    {
        var page = await chromium.NewPageAsync();
        await page.AddInitScriptAsync(
            """
            let data;
            Object.defineProperty(window, "crossrefRecordData", { get: () => data, set(given) {
              const more = Array.from({ length: 20000 }, (_, i) => `p-${i}\tGear, number ${i}\tTarrock\t\tTA-${10000 + i}-0${i % 7}`);
              data = { ...given, parts: [given.parts, ...more].join("\n") };
            } });
            """);
        await page.GotoAsync(copy.Address("record.html"));
        var (field, options) = (page.Locator("#field-part"), page.Locator("#field-part-list .picker-option"));
        await field.FillAsync("t");
        await Expect(options).ToHaveCountAsync(40);
        await Expect(page.Locator(".picker-more")).ToContainTextAsync("more: type more of it");
        await field.FillAsync("ta 12345");
        await Expect(options.First).ToContainTextAsync("TA-12345-0");
        await field.FillAsync("gear number 777");
        await Expect(options.First).ToContainTextAsync("TA-10777-00");
        await field.FillAsync("TA-1234S/00"); // S for 5
        await page.Keyboard.PressAsync("Escape");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("[data-field=part] .offer").First).ToContainTextAsync("TA-12345-00");
        await page.Context.CloseAsync();
    }

    private static Task SaveAsync(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "Save the file", Exact = true }).ClickAsync();
}

using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Demo;

/// <summary>Sorting a table and narrowing it down, with the keyboard, and back again.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class TableTests(ChromiumFixture chromium, DemoSite site) : IClassFixture<DemoSite>
{
    [Fact]
    public async Task Rows_are_narrowed_down_as_words_are_typed()
    {
        var page = await OpenAsync("kinds/bearing.html");
        var rows = page.Locator("tbody tr:not([hidden])");
        var all = await rows.CountAsync();
        await page.GetByLabel("Show only rows with").FillAsync("VELM 0907");
        await Expect(rows).ToHaveCountAsync(1);
        await Expect(rows).ToContainTextAsync("VM-0907");
        await Expect(page.Locator(".narrow [role=status]")).ToHaveTextAsync($"1 of {all} rows");
        await page.GetByLabel("Show only rows with").FillAsync("");
        await Expect(rows).ToHaveCountAsync(all);
    }

    [Fact]
    public async Task A_column_is_sorted_best_word_first_then_turned_round_and_empty_cells_stay_last()
    {
        var page = await OpenAsync("kinds/bearing.html");
        var header = page.Locator("thead th", new() { HasText = "Ostrin F2 folders" });
        await header.GetByRole(AriaRole.Button).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(header).ToHaveAttributeAsync("aria-sort", "ascending");
        var column = await header.EvaluateAsync<int>("h => h.cellIndex");
        var up = await CellsAsync(page, column);
        var words = up.TakeWhile(w => w.Length > 0).ToList();
        Assert.All(up.Skip(words.Count), Assert.Empty);
        Assert.StartsWith("documented", words[0], StringComparison.Ordinal);
        Assert.Contains(words, w => !w.StartsWith("documented", StringComparison.Ordinal));
        await page.Keyboard.PressAsync("Enter");
        await Expect(header).ToHaveAttributeAsync("aria-sort", "descending");
        var down = await CellsAsync(page, column);
        Assert.StartsWith("documented", down[words.Count - 1], StringComparison.Ordinal);
        Assert.All(down.Skip(words.Count), Assert.Empty);
    }

    [Fact]
    public async Task The_address_brings_the_same_view_again()
    {
        var page = await OpenAsync("roles.html");
        await page.GetByLabel("Show only rows with").FillAsync("bearing");
        await page.Locator("thead th").First.GetByRole(AriaRole.Button).ClickAsync();
        await page.Locator("thead th").First.GetByRole(AriaRole.Button).ClickAsync();
        var shown = await page.Locator("tbody tr:not([hidden]) th").AllInnerTextsAsync();
        Assert.NotEmpty(shown);
        var address = page.Url;
        await page.GotoAsync("about:blank");
        await page.GotoAsync(address);
        Assert.Equal(shown, await page.Locator("tbody tr:not([hidden]) th").AllInnerTextsAsync());
    }

    [Fact]
    public async Task The_first_column_stays_in_sight_when_a_wide_table_is_scrolled()
    {
        var page = await OpenAsync("kinds/bearing.html");
        await page.SetViewportSizeAsync(760, 800);
        const string lefts = "[...document.querySelector('.interchange tbody tr').cells].slice(0, 2).map(c => c.getBoundingClientRect().left)";
        var before = await page.EvaluateAsync<double[]>(lefts);
        Assert.True(await page.EvaluateAsync<double>("(() => { const box = document.querySelector('.scroll'); box.scrollLeft = 120; return box.scrollLeft; })()") > 100);
        var after = await page.EvaluateAsync<double[]>(lefts);
        Assert.Equal(before[0], after[0], 1.0);
        Assert.True(after[1] < before[1] - 100, "the second column did not move");
    }

    [Fact]
    public async Task Paper_has_no_controls_and_repeats_the_header()
    {
        var page = await OpenAsync("kinds/bearing.html");
        await Expect(page.Locator(".narrow")).ToBeVisibleAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(page.Locator(".narrow")).ToBeHiddenAsync();
        Assert.Equal("none", await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.sort'), '::after').display"));
        Assert.Equal("table-header-group", await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.interchange thead')).display"));
        Assert.Equal("static", await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.interchange tbody th')).position"));
    }

    private async Task<IPage> OpenAsync(string path)
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(site.Address(path));
        return page;
    }

    private static async Task<IReadOnlyList<string>> CellsAsync(IPage page, int column) =>
        [.. (await page.Locator($"tbody tr > :nth-child({column + 1})").AllTextContentsAsync()).Select(t => t.Trim())];
}

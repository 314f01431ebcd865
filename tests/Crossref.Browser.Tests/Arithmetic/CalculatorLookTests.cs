using Crossref.Browser.Tests.Pages;
using Crossref.Core.Arithmetic;
using Crossref.Site.Pages.Calculation;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Arithmetic;

/// <summary>The pages of the calculators filled in: for everybody, on a phone, on paper, and when something will not do.</summary>
[Collection(ChromiumFixture.Collection)]
public sealed class CalculatorLookTests(ChromiumFixture chromium, RenderedSite site) : IClassFixture<RenderedSite>
{
    // All pages are made by one template: the first has the shortest form, the longest one has choices.
    private static IEnumerable<Calculator> Extremes => [Calculators.All[0], Calculators.All.MaxBy(c => c.Inputs.Count)!];

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Answers_and_refusals_can_be_read_by_everybody(ColorScheme scheme)
    {
        var page = await chromium.NewPageAsync(new() { ColorScheme = scheme, BypassCSP = true });
        foreach (var state in new[] { Filled(Extremes.First()), Refused(Extremes.Last()) })
        {
            await page.GotoAsync(state);
            Assert.Empty((await page.RunAxe(PageLookTests.Rules)).Violations.Select(v => $"{state}: {v.Id}, {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html).Take(3))}"));
        }
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Answers_and_refusals_never_scroll_sideways_on_a_phone()
    {
        var page = await chromium.NewPageAsync(new() { ViewportSize = new() { Width = 360, Height = 800 } });
        var watch = new PageWatch(page);
        foreach (var state in Calculators.All.SelectMany(c => new[] { Filled(c), Refused(c) }))
        {
            await page.GotoAsync("about:blank");
            await page.GotoAsync(state);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 360, state);
        }
        Assert.Empty(watch.NetworkRequests);
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Paper_has_the_answer_its_working_and_what_was_written()
    {
        var calculator = Calculators.All[0];
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(Filled(calculator));
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(page.Locator(".says")).ToBeVisibleAsync();
        await Expect(page.Locator(".working")).ToBeVisibleAsync();
        await Expect(page.Locator(".acts")).ToBeHiddenAsync();
        var written = BenchQuestions.Of(calculator.Name)[0].Inputs.Select(i => i.Name).ToList();
        foreach (var input in calculator.Inputs.Where(i => i.Default.Length == 0 || i.Choices.Count == 0))
            await Expect(page.Locator("#field-" + input.Name)).ToBeVisibleAsync(new() { Visible = written.Contains(input.Name) });
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Enter_leads_to_the_first_field_that_will_not_do_and_its_problem_describes_it()
    {
        var calculator = Calculators.All.First(c => c.Inputs.Any(i => i.Required));
        var needed = calculator.Inputs.First(i => i.Required);
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(site.Address($"calculators/{calculator.Name}.html"));
        var (field, problem) = (page.Locator("#field-" + needed.Name), page.Locator($"#field-{needed.Name}-problem"));
        await Expect(problem).ToBeHiddenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Expect(field).ToBeFocusedAsync();
        await Expect(field).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(field).ToHaveAccessibleDescriptionAsync(new System.Text.RegularExpressions.Regex(System.Text.RegularExpressions.Regex.Escape(await problem.TextContentAsync() ?? "none")));
        await page.GetByRole(AriaRole.Button, new() { Name = "Clear" }).ClickAsync();
        await Expect(problem).ToBeHiddenAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_form_of_another_page_can_fill_it_in_and_a_place_on_the_page_empties_nothing()
    {
        var calculator = Calculators.All[0];
        var filled = Filled(calculator);
        var page = await chromium.NewPageAsync();
        await page.GotoAsync(filled);
        var answer = await page.Locator(".says").TextContentAsync();
        await page.GotoAsync("about:blank");
        await page.GotoAsync(filled.Replace('#', '?'));
        await Expect(page.Locator(".says")).ToHaveTextAsync(answer!);
        await page.EvaluateAsync("location.hash = '#sheet'");
        await Expect(page.Locator(".says")).ToHaveTextAsync(answer!);
        await Expect(page.Locator(".working tbody tr").First).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Hostile_text_in_the_address_stays_text()
    {
        var page = await chromium.NewPageAsync();
        var watch = new PageWatch(page);
        foreach (var calculator in Calculators.All)
        {
            var state = string.Join('&', calculator.Inputs.Select(i => $"{i.Name}={Uri.EscapeDataString("<img src=x onerror=\"globalThis.canary = 1\">")}"));
            await page.GotoAsync(site.Address($"calculators/{calculator.Name}.html") + "#" + state);
            await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
            await Expect(page.Locator(".problem:visible").First).ToBeVisibleAsync();
            Assert.Equal(0, await page.Locator("main img").CountAsync());
        }
        Assert.Empty(watch.Complaints);
        await page.Context.CloseAsync();
    }

    private string Filled(Calculator calculator) => $"{site.Address($"calculators/{calculator.Name}.html")}#{BenchQuestions.Of(calculator.Name)[0].State}";

    // Something in every field that will not do.
    private string Refused(Calculator calculator) =>
        $"{site.Address($"calculators/{calculator.Name}.html")}#{string.Join('&', calculator.Inputs.Select(i => i.Name + "=17,02"))}";
}

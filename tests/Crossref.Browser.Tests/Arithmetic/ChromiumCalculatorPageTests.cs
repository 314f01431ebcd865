using System.Text.RegularExpressions;
using Crossref.Browser.Tests.Demo;
using static Microsoft.Playwright.Assertions;

namespace Crossref.Browser.Tests.Arithmetic;

[Collection(ChromiumFixture.Collection)]
public sealed class ChromiumCalculatorPageTests(ChromiumFixture chromium, DemoSite site) : CalculatorPageTests(chromium, site)
{
    private readonly ChromiumFixture _chromium = chromium;
    private readonly DemoSite _site = site;

    [Fact]
    public async Task Parts_on_record_stand_below_the_working_to_be_looked_at()
    {
        var page = await _chromium.NewPageAsync();
        var section = page.Locator(".on-record");
        Task ChangeAsync(string state) => page.EvaluateAsync($"location.hash = '#{state}'");

        await page.GotoAsync(_site.Address("calculators/gear.html"));
        await Expect(section).ToBeHiddenAsync();
        await ChangeAsync("teeth=32&tip=34");
        await Expect(section).ToContainTextAsync("not yet an answer");
        await Expect(section.Locator("li")).ToHaveTextAsync([new Regex("^OS-0430-I1 Gear, fold roller 2.*module, teeth.*house: 1"), new("^OS-0432-01 "), new("^OS-0610-O1 "), new("^TO4-1085.01 ")]);

        await page.EvaluateAsync("void crossrefParts.push(...Array.from({ length: 20 }, () => crossrefParts[0]))");
        await ChangeAsync("teeth=32&module=1");
        await Expect(section.Locator("li")).ToHaveCountAsync(10);
        await Expect(section).ToContainTextAsync("And 14 more");
        await ChangeAsync("teeth=32&module=1.033");
        await Expect(section).ToContainTextAsync("No part on record has these sizes.");
        await Expect(section.Locator("ol")).ToBeHiddenAsync();
        await Expect(section).Not.ToContainTextAsync("more");

        await ChangeAsync("teeth=32&tip=34");
        await section.Locator("a").First.ClickAsync();
        await Expect(page).ToHaveURLAsync(new Regex("/parts/gear-os-0430[.]html$"));
        await page.GotoAsync(_site.Address("calculators/lamp.html") + "#volts=230&watts=900");
        await Expect(section.Locator("li").First).ToContainTextAsync("only the maker's document");
        await page.Context.CloseAsync();
    }
}

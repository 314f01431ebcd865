using Crossref.Browser.Tests.Tabs;
using Microsoft.Playwright;

namespace Crossref.Browser.Tests;

/// <summary>
/// One Chromium for all browser tests: the one CHROMIUM_PATH names, else /usr/bin/chromium. Join it with
/// <c>[Collection(ChromiumFixture.Collection)]</c> and a constructor parameter.
/// </summary>
public sealed class ChromiumFixture : IAsyncLifetime, Tabs.IBrowser
{
    public const string Collection = "Chromium";

    private IPlaywright? _playwright;
    private Microsoft.Playwright.IBrowser? _browser;

    public async Task InitializeAsync()
    {
        var named = Environment.GetEnvironmentVariable("CHROMIUM_PATH");
        _playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(60_000); // a busy machine is slow, not wrong
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = string.IsNullOrEmpty(named) ? "/usr/bin/chromium" : named,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-extensions", "--no-first-run"],
        });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
    }

    /// <summary>A page of its own context, so that nothing stored by one test is seen by another.</summary>
    public async Task<IPage> NewPageAsync(BrowserNewContextOptions? options = null)
    {
        var context = await _browser!.NewContextAsync(options);
        return await context.NewPageAsync();
    }

    /// <summary>Such a page for scenarios that every browser runs.</summary>
    public async Task<ITab> NewTabAsync() => new ChromiumTab(await NewPageAsync());
}

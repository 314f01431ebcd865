using Microsoft.Playwright;

namespace Crossref.Browser.Tests.Tabs;

/// <summary>A tab of Chromium.</summary>
public sealed class ChromiumTab(IPage page) : ITab
{
    public PageWatch Watch { get; } = new(page);

    public Task OpenAsync(string address) => page.GotoAsync(address);

    public Task TypeAsync(string text) => page.Keyboard.TypeAsync(text);

    public Task PressAsync(string key) => page.Keyboard.PressAsync(key);

    public Task ClickAsync(string selector) => page.Locator(selector).First.ClickAsync();

    public Task ResizeAsync(int width) => page.SetViewportSizeAsync(width, 800);

    public Task<string> RunAsync(string script, string argument) => page.EvaluateAsync<string>(script, argument);
}

using System.Text.RegularExpressions;

namespace Crossref.Browser.Tests.Tabs;

/// <summary>What the other tests say never happens is seen when it happens, and our policy is what stops it.</summary>
public abstract partial class PageWatchTests(IBrowser browser) : IDisposable
{
    private const string Picture = "http://127.0.0.1:49151/x.png"; // nobody listens; a low port no browser would ask
    private const string InlineScript = "<script>window.ran = true</script>";
    private const string AskingPicture = $"<img src='{Picture}' alt=''>";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("page-watch-");

    public void Dispose()
    {
        _folder.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task A_quiet_page_is_quiet()
    {
        var tab = await OpenAsync("<h1>x</h1>");
        tab.WasQuiet();
    }

    [Fact]
    public async Task A_request_is_seen() => Assert.Contains(Picture, (await OpenAsync(AskingPicture)).Watch.NetworkRequests);

    [Theory]
    [InlineData("null.x", "null")]
    [InlineData("Promise.reject(new Error('forgotten'))", "forgotten")]
    [InlineData("console.error('an error')", "an error")]
    [InlineData("console.warn('a warning')", "a warning")]
    public async Task A_complaint_is_seen(string script, string words)
    {
        var tab = await OpenAsync($"<script>{script}</script>");
        await ComplainsAsync(tab, words);
    }

    [Fact]
    public async Task Our_policy_stops_a_script_within_the_page()
    {
        Assert.True(await RanAsync(await OpenAsync(InlineScript)));
        var tab = await OpenAsync(Policy() + InlineScript);
        Assert.False(await RanAsync(tab));
        await ComplainsAsync(tab, "script-src");
    }

    [Fact]
    public async Task Our_policy_stops_a_request()
    {
        var tab = await OpenAsync(Policy() + AskingPicture);
        await ComplainsAsync(tab, "img-src");
    }

    private static Task<bool> RanAsync(ITab tab) => tab.AskAsync<bool>("window.ran === true");

    // An event may come a moment after the page is loaded.
    private static async Task ComplainsAsync(ITab tab, string words)
    {
        for (var i = 0; i < 1000 && !tab.Watch.Complaints.Any(Says); i++) await Task.Delay(20);
        Assert.Contains(tab.Watch.Complaints, complaint => Says(complaint));
        bool Says(string complaint) => complaint.Contains(words, StringComparison.Ordinal);
    }

    private async Task<ITab> OpenAsync(string markup)
    {
        var file = Path.Combine(_folder.FullName, "page.html");
        await File.WriteAllTextAsync(file, $"<!doctype html><meta charset=utf-8><title>x</title>{markup}");
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(new Uri(file).AbsoluteUri);
        return tab;
    }

    private static string Policy()
    {
        var layout = File.ReadAllText(Path.Combine(RepositoryFiles.Root, "site-template", "layout.html"));
        return PolicyElement().Match(layout) is { Success: true } found ? found.Value : throw new InvalidOperationException("The layout has no policy.");
    }

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>")]
    private static partial Regex PolicyElement();
}

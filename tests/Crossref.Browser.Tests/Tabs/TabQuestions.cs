using System.Diagnostics;
using System.Text.Json;

namespace Crossref.Browser.Tests.Tabs;

/// <summary>Questions to a page. Values travel as JSON text, so that no browser's own conversion comes between.</summary>
public static class TabQuestions
{
    // A busy machine is slow, not wrong.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>The value of a JavaScript expression, in which <c>it</c> is the argument.</summary>
    public static async Task<T> AskAsync<T>(this ITab tab, string expression, object? it = null) =>
        JsonSerializer.Deserialize<T>(await tab.RunAsync(
            $"async (text) => {{ const it = JSON.parse(text); return JSON.stringify(await ({expression}) ?? null); }}", JsonSerializer.Serialize(it)))!;

    /// <summary>Waits until an expression holds; the failure says what was waited for.</summary>
    public static async Task UntilAsync(this ITab tab, string expression, object? it = null)
    {
        string? last = null;
        for (var waited = Stopwatch.StartNew(); waited.Elapsed < Patience; await Task.Delay(20))
        {
            try
            {
                if (await tab.AskAsync<bool>(expression, it)) return;
                last = null;
            }
            catch (Exception error) when (error is not OperationCanceledException)
            {
                last = error.Message; // between two pages there is nobody to ask
            }
        }

        var text = await tab.AskAsync<string>("document.body.innerText");
        Assert.Fail($"Never came true: {expression} with {JsonSerializer.Serialize(it)}. {last}\n{text}");
    }

    /// <summary>Waits until the first element that a selector finds says a text, in whatever case.</summary>
    public static Task SaysAsync(this ITab tab, string selector, string text) =>
        tab.UntilAsync("document.querySelector(it[0])?.textContent.toLowerCase().includes(it[1].toLowerCase()) ?? false", (string[])[selector, text]);

    /// <summary>The tab has asked no network and complained of nothing.</summary>
    public static void WasQuiet(this ITab tab)
    {
        Assert.Empty(tab.Watch.NetworkRequests);
        Assert.Empty(tab.Watch.Complaints);
    }
}

using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Crossref.Browser.Tests;

/// <summary>Notes what a page must not do: ask the network, or complain in the console. Begin before the page opens.</summary>
public sealed class PageWatch
{
    private static readonly string[] LocalSchemes = ["file:", "data:", "blob:", "about:"];

    private readonly ConcurrentQueue<string> _networkRequests = new();
    private readonly ConcurrentQueue<string> _complaints = new();
    private readonly ConcurrentQueue<string> _files = new();

    /// <summary>For a tab that notes by itself.</summary>
    public PageWatch()
    {
    }

    public PageWatch(IPage page)
    {
        page.Request += (_, request) => NoteRequest(request.Url);
        page.PageError += (_, error) => NoteComplaint(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                NoteComplaint(message.Text);
            }
        };
    }

    /// <summary>Addresses asked for over a network.</summary>
    public IReadOnlyCollection<string> NetworkRequests => _networkRequests;

    /// <summary>Files read.</summary>
    public IReadOnlyCollection<string> Files => _files;

    /// <summary>Errors and warnings of the console, and exceptions nobody caught.</summary>
    public IReadOnlyCollection<string> Complaints => _complaints;

    public void NoteRequest(string url) => (IsLocal(url) ? _files : _networkRequests).Enqueue(url);

    public void NoteComplaint(string text) => _complaints.Enqueue(text);

    private static bool IsLocal(string url) =>
        LocalSchemes.Any(scheme => url.StartsWith(scheme, StringComparison.Ordinal));
}

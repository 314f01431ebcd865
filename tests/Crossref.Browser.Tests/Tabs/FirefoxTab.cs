using System.Text.Json;

namespace Crossref.Browser.Tests.Tabs;

/// <summary>A tab of Firefox.</summary>
public sealed class FirefoxTab : ITab
{
    // The code points that WebDriver gives to keys that write nothing.
    private static readonly Dictionary<string, string> Keys = new()
    {
        ["Enter"] = "\uE007",
        ["Escape"] = "\uE00C",
        ["Home"] = "\uE011",
        ["ArrowUp"] = "\uE013",
        ["ArrowDown"] = "\uE015",
    };

    // Firefox tells its user of what the policy stopped, but not the protocol; this passes it on.
    private const string TellOfPolicy =
        "() => addEventListener('securitypolicyviolation', (e) => console.error(`the policy stopped ${e.violatedDirective} ${e.blockedURI}`))";

    // The point where a click on the first line of an element lands, or null while it moves, is hidden or covered.
    private const string MiddleOf =
        """
        (async (element) => {
          const middle = () => {
            const [line] = element.getClientRects();
            return line && [Math.trunc(line.x + line.width / 2), Math.trunc(line.y + line.height / 2)];
          };
          if (!element) return null;
          element.scrollIntoView({ block: "center" });
          const before = middle();
          await new Promise((later) => setTimeout(later, 50)); // no frame: a tab in the background paints none
          const after = middle();
          return after && before && after.join() === before.join() && element.contains(document.elementFromPoint(...after)) ? after : null;
        })(document.querySelector(it))
        """;

    private readonly BidiConnection _connection;
    private readonly string _context;

    private FirefoxTab(BidiConnection connection, string context)
    {
        (_connection, _context) = (connection, context);
        connection.Happened += Note;
    }

    public PageWatch Watch { get; } = new();

    /// <summary>A tab of its own container, with storage of its own.</summary>
    public static async Task<FirefoxTab> OpenAsync(BidiConnection connection)
    {
        var container = (await connection.SendAsync("browser.createUserContext", new { })).GetProperty("userContext").GetString();
        var made = await connection.SendAsync("browsingContext.create", new { type = "tab", userContext = container });
        var tab = new FirefoxTab(connection, made.GetProperty("context").GetString()!);
        await connection.SendAsync("script.addPreloadScript", new { functionDeclaration = TellOfPolicy, contexts = (string[])[tab._context] });
        return tab;
    }

    public Task OpenAsync(string address) =>
        _connection.SendAsync("browsingContext.navigate", new { context = _context, url = address, wait = "complete" });

    public Task TypeAsync(string text) =>
        PerformAsync("key", text.SelectMany(c => (object[])[new { type = "keyDown", value = $"{c}" }, new { type = "keyUp", value = $"{c}" }]));

    public Task PressAsync(string key) => TypeAsync(Keys.GetValueOrDefault(key, key));

    public async Task ClickAsync(string selector)
    {
        // A page that is still settling would move away under the pointer: the element must lie still, and on top.
        await this.UntilAsync($"document.readyState === 'complete' && (window.clickAt = await {MiddleOf}) !== null", selector);
        var place = await this.AskAsync<int[]>("window.clickAt");
        await PerformAsync(
            "pointer",
            [
                new { type = "pointerMove", x = place[0], y = place[1] },
                new { type = "pointerDown", button = 0 },
                new { type = "pointerUp", button = 0 },
            ]);
    }

    public Task ResizeAsync(int width) =>
        _connection.SendAsync("browsingContext.setViewport", new { context = _context, viewport = new { width, height = 800 } });

    public async Task<string> RunAsync(string script, string argument)
    {
        var answer = await _connection.SendAsync("script.callFunction", new
        {
            functionDeclaration = script,
            awaitPromise = true,
            target = new { context = _context },
            arguments = (object[])[new { type = "string", value = argument }],
        });
        return answer.TryGetProperty("result", out var result)
            ? result.GetProperty("value").GetString()!
            : throw new InvalidOperationException(answer.GetRawText());
    }

    private Task<JsonElement> PerformAsync(string device, IEnumerable<object> actions) => _connection.SendAsync(
        "input.performActions", new { context = _context, actions = (object[])[new { type = device, id = device, actions }] });

    private void Note(string name, JsonElement about)
    {
        var source = name == "log.entryAdded" ? about.GetProperty("source") : about;
        if (!source.TryGetProperty("context", out var context) || context.GetString() != _context) return;
        if (name == "network.beforeRequestSent") Watch.NoteRequest(about.GetProperty("request").GetProperty("url").GetString()!);
        else if (about.GetProperty("level").GetString() is "error" or "warn") Watch.NoteComplaint(about.GetProperty("text").ToString());
    }
}

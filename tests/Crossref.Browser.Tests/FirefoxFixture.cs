using System.Diagnostics;
using Crossref.Browser.Tests.Tabs;

namespace Crossref.Browser.Tests;

/// <summary>
/// One Firefox for all browser tests: the one FIREFOX_PATH names, else /usr/bin/firefox-esr. Join it with
/// <c>[Collection(FirefoxFixture.Collection)]</c> and a constructor parameter. Playwright drives only a Firefox of its own
/// make, so this one is spoken to directly.
/// </summary>
public sealed class FirefoxFixture : IAsyncLifetime, IBrowser
{
    public const string Collection = "Firefox";

    private const string Listening = "WebDriver BiDi listening on ";

    // What Firefox would ask the network for on its own account.
    private const string Silence = """
        user_pref("services.settings.server", "data:,#nobody/v1");
        user_pref("app.normandy.enabled", false);
        user_pref("network.captive-portal-service.enabled", false);
        user_pref("network.connectivity-service.enabled", false);
        user_pref("datareporting.policy.dataSubmissionEnabled", false);
        """;

    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("firefox-home-");
    private readonly TaskCompletionSource<string> _address = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private Process? _firefox;
    private BidiConnection? _connection;

    public async Task InitializeAsync()
    {
        await File.WriteAllTextAsync(Path.Combine(_home.FullName, "user.js"), Silence);
        var named = Environment.GetEnvironmentVariable("FIREFOX_PATH");
        var start = new ProcessStartInfo(string.IsNullOrEmpty(named) ? "/usr/bin/firefox-esr" : named)
        {
            ArgumentList = { "--headless", "--no-remote", "--profile", _home.FullName, "--remote-debugging-port", "0", "about:blank" },
            Environment = { ["HOME"] = _home.FullName }, // Firefox refuses a home that is another user's
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        _firefox = Process.Start(start)!;
        _firefox.ErrorDataReceived += (_, line) =>
        {
            if (line.Data?.StartsWith(Listening, StringComparison.Ordinal) == true) _address.TrySetResult(line.Data[Listening.Length..]);
        };
        _firefox.BeginErrorReadLine();
        _firefox.BeginOutputReadLine();
        _connection = await BidiConnection.OpenAsync(new Uri(await _address.Task.WaitAsync(TimeSpan.FromMinutes(1)) + "/session"));
        await _connection.SendAsync("session.new", new { capabilities = new { } });
        await _connection.SendAsync("session.subscribe", new { events = (string[])["network.beforeRequestSent", "log.entryAdded"] });
    }

    public async Task DisposeAsync()
    {
        _connection?.Dispose();
        if (_firefox is not null)
        {
            _firefox.Kill(entireProcessTree: true);
            await _firefox.WaitForExitAsync();
            _firefox.Dispose();
        }

        _home.Delete(recursive: true);
    }

    /// <summary>A tab of its own context, so that nothing stored by one test is seen by another.</summary>
    public async Task<ITab> NewTabAsync() => await FirefoxTab.OpenAsync(_connection!);
}

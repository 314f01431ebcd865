namespace Crossref.Browser.Tests.Tabs;

[Collection(FirefoxFixture.Collection)]
public sealed class FirefoxPageWatchTests(FirefoxFixture firefox) : PageWatchTests(firefox);

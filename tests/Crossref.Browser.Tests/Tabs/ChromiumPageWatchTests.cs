namespace Crossref.Browser.Tests.Tabs;

[Collection(ChromiumFixture.Collection)]
public sealed class ChromiumPageWatchTests(ChromiumFixture chromium) : PageWatchTests(chromium);

namespace Crossref.Browser.Tests.Demo;

[Collection(ChromiumFixture.Collection)]
public sealed class ChromiumDemoSiteTests(ChromiumFixture chromium, DemoSite site) : DemoSiteTests(chromium, site);

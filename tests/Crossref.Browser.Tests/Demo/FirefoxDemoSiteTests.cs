namespace Crossref.Browser.Tests.Demo;

[Collection(FirefoxFixture.Collection)]
public sealed class FirefoxDemoSiteTests(FirefoxFixture firefox, DemoSite site) : DemoSiteTests(firefox, site);

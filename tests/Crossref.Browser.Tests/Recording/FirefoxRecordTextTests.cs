using Crossref.Browser.Tests.Demo;

namespace Crossref.Browser.Tests.Recording;

[Collection(FirefoxFixture.Collection)]
public sealed class FirefoxRecordTextTests(FirefoxFixture firefox, DemoSite site) : RecordTextTests(firefox, site);

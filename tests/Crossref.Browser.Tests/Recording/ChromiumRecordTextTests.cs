using Crossref.Browser.Tests.Demo;

namespace Crossref.Browser.Tests.Recording;

[Collection(ChromiumFixture.Collection)]
public sealed class ChromiumRecordTextTests(ChromiumFixture chromium, DemoSite site) : RecordTextTests(chromium, site);

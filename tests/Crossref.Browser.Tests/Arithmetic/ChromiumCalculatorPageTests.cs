using Crossref.Browser.Tests.Demo;

namespace Crossref.Browser.Tests.Arithmetic;

[Collection(ChromiumFixture.Collection)]
public sealed class ChromiumCalculatorPageTests(ChromiumFixture chromium, DemoSite site) : CalculatorPageTests(chromium, site);

using Crossref.Browser.Tests.Demo;

namespace Crossref.Browser.Tests.Arithmetic;

[Collection(FirefoxFixture.Collection)]
public sealed class FirefoxCalculatorPageTests(FirefoxFixture firefox, DemoSite site) : CalculatorPageTests(firefox, site);

namespace Crossref.Browser.Tests.Lookup;

[Collection(ChromiumFixture.Collection)]
public sealed class ChromiumLookupParityTests(ChromiumFixture chromium) : LookupParityTests(chromium);

namespace Crossref.Browser.Tests.Lookup;

[Collection(FirefoxFixture.Collection)]
public sealed class FirefoxLookupParityTests(FirefoxFixture firefox) : LookupParityTests(firefox);

namespace Crossref.Browser.Tests.Recording;

[Collection(FirefoxFixture.Collection)]
public sealed class FirefoxRecordPageTests(FirefoxFixture firefox) : RecordPageTests(firefox);

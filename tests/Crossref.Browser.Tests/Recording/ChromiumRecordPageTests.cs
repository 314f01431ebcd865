namespace Crossref.Browser.Tests.Recording;

[Collection(ChromiumFixture.Collection)]
public sealed class ChromiumRecordPageTests(ChromiumFixture chromium) : RecordPageTests(chromium);

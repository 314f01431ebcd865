namespace Crossref.Browser.Tests;

[CollectionDefinition(ChromiumFixture.Collection)]
public sealed class OneChromium : ICollectionFixture<ChromiumFixture>;

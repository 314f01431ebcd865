namespace Crossref.Browser.Tests;

[CollectionDefinition(FirefoxFixture.Collection)]
public sealed class OneFirefox : ICollectionFixture<FirefoxFixture>;

using System.Runtime.CompilerServices;

// The coders and tables of the index are an inner matter, tested from close by.
[assembly: InternalsVisibleTo("Crossref.Core.Tests")]

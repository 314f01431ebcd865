using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>A library of 20,000 parts and its index, made once for a class of tests.</summary>
public sealed class LargeLibraryFixture
{
    public LargeLibraryFixture()
    {
        Entries = LargeLibrary.Entries(20_000);
        Files = LookupIndex.Build(Entries);
        Reader = new LookupReader(Files.Text);
    }

    public IReadOnlyList<LookupEntry> Entries { get; }

    public LookupFiles Files { get; }

    public LookupReader Reader { get; }
}

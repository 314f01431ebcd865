using Crossref.Core.Lookup;
using Crossref.Core.Tests.Lookup.AtSize;

namespace Crossref.Browser.Tests.Lookup;

/// <summary>A site over 20,000 parts, made once for a class of tests. Its page would load the index whole if it could.</summary>
public sealed class LargeSite : IDisposable
{
    public LargeSite()
    {
        Entries = LargeLibrary.Entries(20_000);
        Site = new LookupSite(Entries, preload: "on");
        Reader = new LookupReader(Site.Files.Text);
    }

    public IReadOnlyList<LookupEntry> Entries { get; }

    public LookupSite Site { get; }

    public LookupReader Reader { get; }

    public void Dispose() => Site.Dispose();
}

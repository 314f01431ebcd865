using Crossref.Browser.Tests.Tabs;
using Crossref.Core.Lookup;
using Crossref.Core.Tests.Lookup;

namespace Crossref.Browser.Tests.Lookup;

/// <summary>The script of the site and the command line's reader answer alike.</summary>
public abstract class LookupParityTests(IBrowser browser)
{
    // Small shards and heads, so that a small library has many shards and overflow.
    private static readonly LookupLayout Small = new() { ShardLimit = 3000, HeadLimit = 600 };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Hits_order_reasons_and_scores_are_the_same(bool wholeLoad)
    {
        var library = SampleLibrary.Random(700, 21);
        using var site = new LookupSite(library, Small);
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(site.Page);

        var queries = Queries(library);
        Assert.True(await tab.AskAsync<bool>(
            """
            (() => {
              window.loaded = []; // scripts from files: not every browser tells of them by itself
              new MutationObserver((changes) => loaded.push(...changes.flatMap(({ addedNodes }) => [...addedNodes].map(({ src }) => src))))
                .observe(document, { childList: true, subtree: true });
              return true;
            })()
            """));
        var reader = new LookupReader(site.Files.Text);
        var expected = ReaderPair.Answers(reader, queries);
        Assert.Equal(expected, await ReaderPair.ScriptAnswersAsync(tab, queries, wholeLoad));

        Assert.True(expected.Count(hits => hits.Count > 0) > 300, "the queries must find something");
        Assert.Equal(Enumerable.Range(0, 10), queries.SelectMany(reader.Find).Select(hit => LookupTier.Of(hit.Score)).Distinct().Order());
        tab.WasQuiet();
        if (wholeLoad)
        {
            var loaded = await tab.AskAsync<string[]>("window.loaded");
            Assert.All(site.Files, file => Assert.Contains(site.Address(file.Path), loaded));
        }
    }

    [Fact]
    public async Task Every_character_folds_alike()
    {
        using var site = new LookupSite([]);
        var tab = await browser.NewTabAsync();
        await tab.OpenAsync(site.Page);

        // Halves of surrogate pairs cannot travel between the two alone; a whole pair can.
        var characters = Enumerable.Range(0, 0x10000).Where(c => c is < 0xD800 or > 0xDFFF).Select(c => (char)c).ToArray();
        var text = new string(characters) + "\ud83d\ude00";
        var folded = await tab.AskAsync<string>("crossrefLookup.fold(it)", text);
        Assert.Equal(TextFold.Fold(text), folded);

        var forms = await tab.AskAsync<string[]>(
            "it.map(crossrefLookup.numberForm)", characters.Chunk(64).Select(chunk => new string(chunk)).ToArray());
        Assert.Equal(characters.Chunk(64).Select(chunk => NumberForm.Of(new string(chunk))), forms);
    }

    private static List<LookupQuery> Queries(IReadOnlyList<LookupEntry> library)
    {
        var texts = SampleLibrary.Queries(library, 400, 22).Concat(
        [
            "", "  ", "-", "grün", "GRUN Ø12", "o", "e\u0301", new string('9', 300), "a b c d e f g h i j k l m n",
            "bearing\u00a01203", "OS 12", "12", "\u8ef8\u53d7", "0S-12o3", "be", "gear velm", "bearing fold steel narrow",
        ]);
        return
        [
            .. texts.Select((text, i) => new LookupQuery(text)
            {
                Limit = i % 3 == 0 ? 5 : i % 4 == 0 ? 1000 : 50,
                Kind = i % 7 == 0 ? "gear" : null,
                Type = i % 5 == 0 ? "part" : null,
                Standing = i % 11 == 0 ? "ruled out" : null,
                Family = i % 13 == 0 ? "Velm-f3" : null,
            }),
        ];
    }
}

using Crossref.Core.Lookup;
using Lucene.Net.Analysis.Standard;
using Lucene.Net.Analysis.Util;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Search;
using Lucene.Net.Search.Similarities;
using Lucene.Net.Store;
using Lucene.Net.Util;

namespace Crossref.Core.Tests.Lookup.FullText;

/// <summary>
/// The same entries under a full-text library: a second opinion on what words should find. Its own way of telling words
/// apart and its own BM25; only the three fields and how they weigh against each other are ours.
/// </summary>
public sealed class FullTextIndex : IDisposable
{
    private static readonly (string Name, float Weight)[] Fields = [("name", 5), ("alias", 3), ("text", 1)];

    private readonly RAMDirectory _directory = new();
    private readonly DirectoryReader _reader;
    private readonly IndexSearcher _searcher;
    private readonly IReadOnlyList<LookupEntry> _entries;

    /// <summary>Indexes entries; of two hits with one score the earlier entry comes first.</summary>
    public FullTextIndex(IReadOnlyList<LookupEntry> entries)
    {
        _entries = entries;
        using var analyzer = new StandardAnalyzer(LuceneVersion.LUCENE_48, CharArraySet.Empty);
        // One segment, so that documents are numbered as they were added.
        var config = new IndexWriterConfig(LuceneVersion.LUCENE_48, analyzer) { Similarity = new BM25Similarity(), RAMBufferSizeMB = 1024 };
        using (var writer = new IndexWriter(_directory, config))
        {
            foreach (var entry in entries)
            {
                writer.AddDocument(DocumentOf(entry));
            }
        }

        _reader = DirectoryReader.Open(_directory);
        _searcher = new IndexSearcher(_reader) { Similarity = new BM25Similarity() };
    }

    /// <summary>The entries that have all the words, best first; each word counts in the field where it tells most.</summary>
    public IReadOnlyList<LookupEntry> Find(IEnumerable<string> words, int limit)
    {
        var all = new BooleanQuery();
        foreach (var word in words)
        {
            var best = new DisjunctionMaxQuery(0);
            foreach (var (name, weight) in Fields)
            {
                best.Add(new TermQuery(new Term(name, word)) { Boost = weight });
            }

            all.Add(best, Occur.MUST);
        }

        return [.. _searcher.Search(all, limit).ScoreDocs.Select(hit => _entries[hit.Doc])];
    }

    public void Dispose()
    {
        _reader.Dispose();
        _directory.Dispose();
    }

    private static Document DocumentOf(LookupEntry entry) =>
    [
        new TextField("name", entry.Title, Field.Store.NO),
        new TextField("alias", string.Join(" ", entry.Aliases), Field.Store.NO),
        new TextField("text", string.Join(" ", Text(entry)), Field.Store.NO),
    ];

    private static IEnumerable<string> Text(LookupEntry entry) =>
    [
        entry.Detail, entry.Id, entry.Type, entry.Kind ?? "", entry.Text, .. entry.Families,
        .. entry.Numbers.SelectMany(number => new[] { number.Maker ?? "", number.Text }),
    ];
}

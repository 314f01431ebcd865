using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup;

public class LookupIndexTests
{
    private static readonly LookupLayout Small = new() { ShardLimit = 700, HeadLimit = 200 };

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 8)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Ranking_equals_a_naive_scan(int seed)
    {
        var library = SampleLibrary.Random(40 + (seed * 45), seed);
        // Heads that hold everything: beside a cut head, hits of several words are only nearly in order.
        var reader = SampleLibrary.Open(library, Small with { HeadLimit = 100_000 });
        var naive = new NaiveLookup(library);
        foreach (var (text, i) in SampleLibrary.Queries(library, 140, seed).Select((text, i) => (text, i)))
        {
            var query = new LookupQuery(text)
            {
                Limit = i % 3 == 0 ? 5 : 50,
                Kind = i % 7 == 0 ? "bearing" : null,
                Type = i % 5 == 0 ? "part" : null,
                Standing = i % 11 == 0 ? "ruled out" : null,
                Family = i % 13 == 0 ? "Velm-f3" : null,
            };
            Assert.Equal(
                naive.Find(query).Select(found => $"{text}: {found}"),
                reader.Find(query).Select(hit => $"{text}: {(hit.Id, hit.Score)}"));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_number_is_found_whole_begun_from_its_middle_and_with_a_slip(int seed)
    {
        var random = new Random(seed);
        var library = SampleLibrary.Random(150, seed + 100);
        var reader = SampleLibrary.Open(library, Small);
        foreach (var (entry, number) in library.SelectMany(entry => entry.Numbers.Select(number => (entry, number.Text))))
        {
            var from = random.Next(1, number.Length - 2);
            string[] queries =
            [
                number,
                number[..random.Next(2, number.Length)],
                number[from..random.Next(from + 3, number.Length + 1)],
                SampleLibrary.Spoil(random, number),
            ];
            foreach (var text in queries.Where((q, i) => NumberForm.Of(q).Length >= (i == 3 ? 4 : i == 2 ? 3 : 1)))
            {
                var hits = reader.Find(new LookupQuery(text) { Limit = 1000 });
                Assert.True(hits.Any(hit => hit.Id == entry.Id), $"{text} does not find {number}");
            }
        }
    }

    [Fact]
    public void Overflow_is_read_when_the_best_of_a_word_are_too_few()
    {
        var library = SampleLibrary.Random(400, 7);
        var cut = SampleLibrary.Open(library, Small with { HeadLimit = 40 });
        var whole = SampleLibrary.Open(library, Small with { HeadLimit = 100_000 });
        foreach (var text in new[] { "bearing", "bearing fold", "gear velm steel", "be" })
        {
            var query = new LookupQuery(text) { Limit = 1000 };
            Assert.Equal(whole.Find(query), cut.Find(query), SameHit);
        }

        Assert.Equal(
            whole.Find(new LookupQuery("bearing") { Limit = 5 }), cut.Find(new LookupQuery("bearing") { Limit = 5 }), SameHit);
    }

    [Fact]
    public void The_same_entries_in_any_order_give_the_same_bytes()
    {
        var library = SampleLibrary.Random(300, 8);
        var shuffled = library.ToArray();
        new Random(1).Shuffle(shuffled);
        Assert.Equal(LookupIndex.Build(library, Small), LookupIndex.Build(shuffled, Small));
    }

    [Fact]
    public void Files_are_ascii_within_the_limit_and_named_for_any_disk()
    {
        var files = LookupIndex.Build(SampleLibrary.Random(4000, 9), new LookupLayout { ShardLimit = 900, HeadLimit = 300 });
        Assert.True(files.Count > 300);
        Assert.Equal("lookup/index.js", files[0].Path);
        Assert.All(files.Skip(1), file => Assert.InRange(file.Text.Length, 1, 900));
        Assert.All(files, file => Assert.Matches("^lookup/(index|[a-z]+/[0-9]+/[0-9a-f]{2})\\.js$", file.Path));
        Assert.All(files, file => Assert.True(file.Text.All(char.IsAscii)));
        Assert.All(files.GroupBy(file => Path.GetDirectoryName(file.Path)), folder => Assert.InRange(folder.Count(), 1, 256));
    }

    [Fact]
    public void An_empty_library_finds_nothing() =>
        Assert.Empty(SampleLibrary.Open([]).Find(new LookupQuery("OS-1203-02")));

    [Fact]
    public void Twins_are_a_programmers_error() =>
        Assert.Throws<ArgumentException>(() => LookupIndex.Build([SampleLibrary.Bench[0], SampleLibrary.Bench[0]]));

    [Fact]
    public void An_unknown_format_is_refused_in_words()
    {
        var error = Assert.Throws<LookupFormatException>(
            () => new LookupReader(_ => ShardScript.Wrap("index", "crossref-lookup\t99\t0\t0")));
        Assert.Contains("format 99", error.Message, StringComparison.Ordinal);
        Assert.Throws<LookupFormatException>(() => new LookupReader(_ => ShardScript.Wrap("index", "?")));
    }

    [Fact]
    public void Twenty_thousand_entries_fill_many_shards_and_every_number_is_found()
    {
        var library = SampleLibrary.Random(20_000, 10);
        var files = LookupIndex.Build(library);
        var loads = 0;
        var reader = new LookupReader(path =>
        {
            loads++;
            return files.Text(path);
        });
        Assert.All(files.Skip(1), file => Assert.InRange(file.Text.Length, 1, 64 * 1024));
        foreach (var text in SampleLibrary.Queries(library, 200, 11))
        {
            reader.Find(new LookupQuery(text));
        }

        foreach (var number in library.Take(200).SelectMany(entry => entry.Numbers))
        {
            Assert.True(reader.Find(new LookupQuery(number.Text))[0].IsExact);
        }

        Assert.InRange(loads, 1, files.Count);
    }

    private static bool SameHit(LookupHit x, LookupHit y) => (x.Id, x.Score, x.Why) == (y.Id, y.Score, y.Why);
}

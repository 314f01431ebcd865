using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup.AtSize;

/// <summary>
/// Numbers in a library of 20,000 parts: whatever a plain scan finds, the reader finds in the same tier, and nothing else.
/// </summary>
public class NumberRecallTests(LargeLibraryFixture large) : IClassFixture<LargeLibraryFixture>
{
    private readonly PlainScan _scan = new(large.Entries);

    public static TheoryData<string> Sorts => ["exact", "prefix", "middle", .. Mistyping.Slips];

    [Theory]
    [MemberData(nameof(Sorts))]
    public void The_reader_finds_what_a_plain_scan_finds(string sort)
    {
        var random = new Random(77);
        for (var i = 0; i < 600; i++)
        {
            var part = large.Entries[random.Next(20_000)];
            var text = Typed(random, part.Numbers[random.Next(part.Numbers.Count)].Text, sort);

            // The limit is raised to the whole library, so that the sets of all hits are compared.
            var all = All(large.Reader, text);
            Assert.Empty(Differences(all, text));
            Assert.Contains(all, hit => hit.Id == part.Id && hit.Type == "part");

            // The usual limit then gives the first of these.
            Assert.Equal(all.Take(50).Select(Line), large.Reader.Find(new LookupQuery(text)).Select(Line));
        }
    }

    [Fact]
    public void A_part_that_is_not_in_the_index_is_missed()
    {
        var left = large.Entries[123];
        var reader = new LookupReader(LookupIndex.Build(large.Entries.Where(entry => entry != left)).Text);
        var number = left.Numbers[0].Text;
        string[] texts = [number, number[..^1], number[1..], Mistyping.Slip(new Random(5), number, "swap")];
        Assert.All(texts, text => Assert.Contains(Differences(All(reader, text), text), line => line.EndsWith($"lacks part {left.Id}", StringComparison.Ordinal)));
    }

    private static IReadOnlyList<LookupHit> All(LookupReader reader, string text) => reader.Find(new LookupQuery(text) { Limit = 50_000 });

    private IEnumerable<string> Differences(IEnumerable<LookupHit> hits, string text)
    {
        var form = PlainScan.Form(text);
        var found = hits.Where(hit => LookupTier.Of(hit.Score) > LookupTier.Words)
            .ToLookup(hit => Math.Min(LookupTier.Of(hit.Score), LookupTier.Exact), hit => $"{hit.Type} {hit.Id}");
        var seen = new HashSet<string>();
        foreach (var (tier, entries) in Tiers(form))
        {
            var expected = entries.Select(entry => $"{entry.Type} {entry.Id}").Where(seen.Add).ToHashSet();
            foreach (var name in expected.Except(found[tier]))
            {
                yield return $"{text} in tier {tier} lacks {name}";
            }

            foreach (var name in found[tier].Except(expected))
            {
                yield return $"{text} in tier {tier} has {name}";
            }
        }
    }

    private IEnumerable<(int Tier, IEnumerable<LookupEntry> Entries)> Tiers(string form) =>
    [
        (LookupTier.Exact, _scan.Exact(form)),
        (LookupTier.Prefix, _scan.Starting(form)),
        (LookupTier.Middle, form.Length >= 3 ? _scan.Containing(form) : []),
        (LookupTier.Typo, form.Length >= 4 ? _scan.OneSlip(form) : []),
    ];

    private static string Typed(Random random, string number, string sort) => sort switch
    {
        "exact" => Mistyping.Lookalikes(random, Mistyping.Separated(random, number, "-./_")),
        "prefix" => number[..random.Next(2, number.Length)],
        "middle" => Mistyping.Middle(random, number),
        _ => Mistyping.Slip(random, Mistyping.Separated(random, number, "-./_"), sort),
    };

    private static string Line(LookupHit hit) => $"{hit.Type} {hit.Id} {hit.Score} {hit.Why}";
}

using Crossref.Core.Lookup;

namespace Crossref.Core.Tests.Lookup;

public class LookupRankingTests
{
    private static readonly LookupReader Reader = SampleLibrary.Open(SampleLibrary.Bench);

    [Theory]
    [InlineData("OS-1203-02", "brg-os-1203", LookupTier.Exact + 4, "OS-1203-02 is its number")]
    [InlineData("os 12o3 o2", "brg-os-1203", LookupTier.Exact + 4, "OS-1203-02 is its number")]
    [InlineData("VM0903", "brg-os-1203", LookupTier.Exact + 3, "VM-0903 is Velm's number for it")]
    [InlineData("OS-1203-01", "brg-os-1203", LookupTier.Exact + 2, "OS-1203-01 is an earlier number of Bearing, fold roller")]
    [InlineData("6001 2rs", "brg-os-1303", LookupTier.Exact + 1, "6001-2RS is its generic designation")]
    [InlineData("squeal", "squeal", LookupTier.Exact, "squeal is its id")]
    [InlineData("OS-1203", "brg-os-1203", LookupTier.Prefix, "OS-1203-01, an earlier number, starts with OS-1203")]
    [InlineData("VM-09", "brg-os-1203", LookupTier.Prefix, "VM-0903, Velm's number for it, starts with VM-09")]
    [InlineData("432-0", "gear-os-0432", LookupTier.Middle, "OS-0432-01 contains 432-0")]
    [InlineData("OS-1203-07", "brg-os-1203", LookupTier.Typo, "one character differs from OS-1203-01, an earlier number")]
    [InlineData("OS-0432-012", "gear-os-0432", LookupTier.Typo, "one character more than OS-0432-01")]
    [InlineData("OS-043-01", "gear-os-0432", LookupTier.Typo, "one character less than OS-0432-01")]
    [InlineData("OS-4032-01", "gear-os-0432", LookupTier.Typo, "two characters swapped in OS-0432-01")]
    [InlineData("pinion", "gear-os-0432", LookupTier.Words, "word: pinion")]
    [InlineData("pini", "gear-os-0432", LookupTier.Words, "word: pinion")]
    [InlineData("fold-pinion", "gear-os-0432", LookupTier.Words, "words: fold, pinion")]
    [InlineData("velm 0903", "brg-os-1203", LookupTier.Middle, "VM-0903, Velm's number for it, contains 0903; word: velm")]
    [InlineData("bearing 1303", "brg-os-1303", LookupTier.Middle, "OS-1303-01 contains 1303; word: bearing")]
    [InlineData("OS-1303-01 bearing", "brg-os-1303", LookupTier.Exact + 4, "OS-1303-01 is its number; word: bearing")]
    [InlineData("gear OS-0433-01", "gear-os-0432", LookupTier.Typo, "one character differs from OS-0432-01; word: gear")]
    [InlineData("b-2025-11", "b-2025-117", LookupTier.Words, "words: b, 2025, 117")]
    [InlineData("os clutch 9999", "squeal", LookupTier.Words, "word: clutch")]
    public void The_best_hit_says_why(string text, string id, int tier, string why)
    {
        var hits = Reader.Find(new LookupQuery(text));
        var hit = hits.FirstOrDefault(h => h.Id == id);
        Assert.NotNull(hit);
        Assert.Equal((tier, why), (LookupTier.Of(hit.Score), hit.Why));
        Assert.Equal(tier >= LookupTier.Exact, hit.IsExact);
        Assert.Equal(LookupTier.Of(hits[0].Score), tier);
    }

    [Fact]
    public void A_hit_shows_what_its_entry_says()
    {
        var hit = Reader.Find(new LookupQuery("OS-1203-02"))[0];
        Assert.Equal(
            ("part", "Bearing, fold roller", "parts/brg-os-1203.html", "12 × 28 × 8 mm", "bearing", "documented"),
            (hit.Type, hit.Title, hit.Page, hit.Detail, hit.Kind, hit.Standing));
        Assert.Equal(["ostrin-f2", "velm-c7"], hit.Families);
    }

    [Fact]
    public void Tiers_come_in_their_order()
    {
        var library = new[]
        {
            Numbered("number", "AB-1234", NumberRole.Number),
            Numbered("also", "AB-1234", NumberRole.Also),
            Numbered("earlier", "AB-1234", NumberRole.Earlier),
            Numbered("generic", "AB-1234", NumberRole.Generic),
            Numbered("prefix", "AB-12345", NumberRole.Number),
            Numbered("middle", "XAB-1234", NumberRole.Number),
            Numbered("typo", "AB-1235", NumberRole.Number),
            Numbered("words", "", NumberRole.Number) with { Title = "see ab-1234" },
            Numbered("nothing", "CD-9876", NumberRole.Number),
        };
        var found = SampleLibrary.Open(library).Find(new LookupQuery("AB-1234")).Select(hit => hit.Id);
        Assert.Equal(["number", "also", "earlier", "generic", "prefix", "middle", "typo", "words"], found);
    }

    [Fact]
    public void Names_weigh_more_than_aliases_and_aliases_more_than_text()
    {
        var padding = string.Join(' ', Enumerable.Range(0, 12).Select(i => $"filler{i}"));
        var library = new[]
        {
            Numbered("text", "1", NumberRole.Number) with { Text = "pawl pawl pawl pawl pawl pawl" },
            Numbered("alias", "2", NumberRole.Number) with { Aliases = [$"pawl {padding}"] },
            Numbered("name", "3", NumberRole.Number) with { Title = $"pawl {padding} {padding}" },
        };
        Assert.Equal(["name", "alias", "text"], SampleLibrary.Open(library).Find(new LookupQuery("pawl")).Select(hit => hit.Id));
    }

    [Fact]
    public void Filters_leave_only_what_they_name()
    {
        Assert.Equal(
            ["ostrin-f2/fold-head/roller-2-bearing-rear"],
            Reader.Find(new LookupQuery("bearing") { Type = "position" }).Select(hit => hit.Id));
        Assert.Equal(
            ["brg-os-1203"],
            Reader.Find(new LookupQuery("roller") { Family = "velm-c7", Kind = "bearing", Standing = "documented" }).Select(hit => hit.Id));
        Assert.Empty(Reader.Find(new LookupQuery("bearing") { Kind = "no such" }));
    }

    [Fact]
    public void A_filter_alone_lists_what_it_leaves()
    {
        var hits = Reader.Find(new LookupQuery(" ") { Kind = "clutch" });
        Assert.Equal([("clt-vm-0110", "kind: clutch", 0)], hits.Select(hit => (hit.Id, hit.Why, hit.Score)));
        Assert.Empty(Reader.Find(new LookupQuery(" ")));
    }

    [Fact]
    public void Two_characters_are_answered_by_the_beginnings_of_numbers()
    {
        Assert.Equal(["gear-os-0432"], Reader.Find(new LookupQuery("OS 04")).Select(hit => hit.Id).Take(1));
        Assert.DoesNotContain(Reader.Find(new LookupQuery("43")), hit => hit.Id == "gear-os-0432");
    }

    [Fact]
    public void The_filters_on_offer_are_counted() =>
        Assert.Contains(new FilterValue("kind", "bearing", 4), Reader.FilterValues);

    [Theory]
    [InlineData("- / -")]
    [InlineData("xyzzy")]
    public void Nothing_is_found_where_nothing_is(string text) => Assert.Empty(Reader.Find(new LookupQuery(text)));

    [Fact]
    public void The_most_hits_are_the_limit() =>
        Assert.Equal(2, Reader.Find(new LookupQuery("bearing") { Limit = 2 }).Count);

    private static LookupEntry Numbered(string id, string number, NumberRole role) => new()
    {
        Type = "part",
        Id = id,
        Title = "thing",
        Page = $"parts/{id}.html",
        Numbers = [new(number, role)],
    };
}

using Crossref.Site.Recording;

namespace Crossref.Site.Tests.Recording;

public class MintedIdTests
{
    private static readonly DateOnly Day = new(2026, 2, 11);

    [Fact]
    public void The_same_words_give_the_same_id_and_other_words_another()
    {
        var ids = Enumerable.Range(0, 500).Select(i => MintedId.Of(Day, "ferry-lane", $"note: {i}\n", 0)).ToList();
        Assert.Equal(ids[7], MintedId.Of(Day, "ferry-lane", "note: 7\n", 0));
        Assert.Equal(500, ids.Distinct().Count());
        Assert.NotEqual(ids[7], MintedId.Of(Day, "ferry-lane", "note: 7\n", 1));
        Assert.All(ids, id => Assert.Matches("^2026-02-11-ferry-lane-[a-hjkmnp-z2-9]{4}$", id));
    }

    [Theory]
    [InlineData("a")]
    [InlineData("my-shop-in-the-old-mill-2-long-street")]
    [InlineData("my-shop-in-the-old-mill--")]
    public void An_id_has_at_most_forty_characters_and_still_says_whose_it_is(string library)
    {
        var id = MintedId.Of(Day, library, "x", 0);
        Assert.InRange(id.Length, 1, 40);
        Assert.DoesNotContain("--", id, StringComparison.Ordinal);
        Assert.Equal(MintedId.Owner(library), MintedId.OwnerOf(id));
    }

    [Theory]
    [InlineData("repair-2026-014")]
    [InlineData("later-gear-pin")]
    [InlineData("2026-02-11-squeal-again")]
    public void An_id_of_another_form_names_no_owner(string id) => Assert.Null(MintedId.OwnerOf(id));
}

using Crossref.Core.Records;
using Crossref.Site.Pages;

namespace Crossref.Site.Tests.Pages;

public sealed class PageMapTests
{
    private static readonly Place Nowhere = new("x.yaml", 1, 1);

    [Theory]
    [InlineData("brg-os-1203", "parts/brg-os-1203.html")]
    [InlineData("con", "parts/con---")]
    [InlineData("lpt1", "parts/lpt1---")]
    [InlineData("../../etc/passwd", "parts/etc-passwd---")]
    [InlineData("Größe", "parts/gr-e---")]
    [InlineData("a--b", "parts/a-b---")]
    [InlineData("...", "parts/x---")]
    public void A_part_has_a_safe_path(string id, string start)
    {
        var path = Map().Of(Part(id))!.Value.Path;
        Assert.StartsWith(start, path, StringComparison.Ordinal);
        Assert.Matches("^parts/[a-z0-9-]+\\.html$", path);
    }

    [Fact]
    public void Ids_that_differ_by_case_alone_stay_apart() =>
        Assert.NotEqual(Map().Of(Part("Brg-a")), Map().Of(Part("BRG-A")));

    [Fact]
    public void The_longest_position_stays_below_the_limit()
    {
        var id = new string('a', 40);
        var position = new Position { Id = id, Family = id, Assembly = id, Name = "", Kind = PartKind.Other, Place = Nowhere };
        Assert.True(PageMap.Of(position).Length <= 120, PageMap.Of(position));
        Assert.NotEqual(PageMap.Of(position), PageMap.Of(position with { Id = id[1..] + "b" }));
        var longer = position with { Id = new string('b', 400), Assembly = new string('c', 400), Family = new string('d', 400) };
        Assert.True(PageMap.Of(longer).Length <= 120, PageMap.Of(longer));
    }

    [Fact]
    public void Dashes_in_ids_never_make_two_positions_one()
    {
        Position At(string assembly, string id) => new() { Id = id, Family = "f", Assembly = assembly, Name = "", Kind = PartKind.Other, Place = Nowhere };
        Assert.NotEqual(PageMap.Of(At("a-b", "c")), PageMap.Of(At("a", "b-c")));
        Assert.NotEqual(PageMap.Of(At("a--b", "c")), PageMap.Of(At("a", "b--c")));
    }

    [Fact]
    public void A_large_library_is_spread_over_folders()
    {
        var library = new Library(Card, Enumerable.Range(0, 4001).Select(i => Part("p-" + i)));
        var folders = library.Parts.Values.Select(p => Path.GetDirectoryName(new PageMap(library).Of(p)!.Value.Path)!).Take(200).Distinct().Count();
        Assert.True(folders > 50);
    }

    [Fact]
    public void A_new_claim_moves_no_older_one_but_those_of_the_overview()
    {
        var claims = Enumerable.Range(0, 1000).Select(i => new Claim { Id = $"c-{i:0000}", Part = new Ref("p", Nowhere), Date = new PartialDate(2020, 1, 1), Place = Nowhere }).ToList();
        var (before, after) = (new PageMap(new Library(Card, claims.Take(999))), new PageMap(new Library(Card, claims)));
        var moved = claims.Take(999).Count(c => before.Of(c) != after.Of(c));
        Assert.Equal(0, moved);
        Assert.Equal("claims.html", after.ClaimPages[0].Path);
        Assert.Equal(1000, after.ClaimPages.Sum(p => p.Claims.Count));
        Assert.Equal("c-0999", after.ClaimPages[0].Claims[0].Id);
    }

    private static LibraryRecord Card { get; } = new() { Id = "shop", Title = "Shop", Place = Nowhere };

    private static PageMap Map() => new(new Library(Card, []));

    private static Part Part(string id) => new() { Id = id, Name = "", Kind = PartKind.Other, Place = Nowhere };
}

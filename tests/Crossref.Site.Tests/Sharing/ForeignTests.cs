using Crossref.Site.Sharing.Combining;

namespace Crossref.Site.Tests.Sharing;

/// <summary>Two libraries that are not copies of each other.</summary>
public class ForeignTests
{
    private const string Lamp = "part: lmp-1\nkind: lamp\nname: Lamp\nsafety: true\nsource: list\nsize: {volts: 230}\nsuperseded-by: lmp-2\n";
    private const string Family = "family: f-1\nname: Press\nmaker: Velm\nassemblies:\n  - assembly: head\n    name: Head\n    positions:\n      - position: lamp\n        name: Lamp\n        kind: lamp\n        listed: [lmp-1]\n        source: list\n";

    private static Copy Library(string id) => Copy.Of(id).With("parts.yaml", Lamp).With("families.yaml", Family).With("sources.yaml", "source: list\ntype: seller\ntitle: List\n");

    [Fact]
    public void Shop_records_and_new_catalogue_records_lie_in_a_folder_of_their_library()
    {
        using var ours = Library("ferry-lane").With("shop/bags.yaml", "bag: b-1\npart: lmp-1\nquantity: 2\ngrade: runner\n").Note();
        using var theirs = Library("velm-house").With("shop/bags.yaml", "# theirs\nbag: b-1\npart: lmp-9\nquantity: 7\ngrade: runner\n---\nbag: b-2\npart: lmp-1\nquantity: 1\ngrade: runner\n").With("parts/more.yaml", "part: lmp-9\nkind: lamp\nname: Ninth\n")
            .With("from/third-shop/claims/c.yaml", "claim: c-1\npart: lmp-1\nreplaces: lmp-2\nverdict: fits\nbasis: told\nby: R. Finch\ndate: 2026-01-05\n");
        ours.Combine(theirs);
        Assert.Equal("bag: b-1\npart: lmp-1\nquantity: 2\ngrade: runner\n", ours["shop/bags.yaml"]);
        Assert.Equal(theirs["shop/bags.yaml"], ours["from/velm-house/shop/bags.yaml"]);
        Assert.Equal(theirs["parts/more.yaml"], ours["from/velm-house/parts/more.yaml"]);
        Assert.Equal(theirs["library.yaml"], ours["from/velm-house/library.yaml"]);
        Assert.Equal(theirs["from/third-shop/claims/c.yaml"], ours["from/third-shop/claims/c.yaml"]);
        Assert.Empty(ours.Open());
        Assert.Empty(ours.Plan(theirs).Changes);
        // And back: what is ours is known there as ours, and ours alone comes.
        theirs.Combine(ours);
        Assert.Equal("bag: b-1\npart: lmp-1\nquantity: 2\ngrade: runner\n", theirs["from/ferry-lane/shop/bags.yaml"]);
        Assert.False(theirs.Has("from/velm-house/shop/bags.yaml"));
        Assert.Equal(ours.Records().Keys.Order(StringComparer.Ordinal), theirs.Records().Keys.Order(StringComparer.Ordinal));
        Assert.Empty(ours.Plan(theirs).Changes);
    }

    [Theory]
    [InlineData("parts.yaml", "source: list", "source: other", "lmp-1 source: source: list\n | source: other\n")]
    [InlineData("parts.yaml", "superseded-by: lmp-2", "superseded-by: lmp-3", "lmp-1 superseded-by: superseded-by: lmp-2\n | superseded-by: lmp-3\n")]
    [InlineData("parts.yaml", "kind: lamp", "kind: other", "lmp-1 kind: kind: lamp\n | kind: other\n")]
    [InlineData("parts.yaml", "source: list\n", "source: list\nalso: [{maker: Tarrock, number: T-1}]\n", "lmp-1 also: - | also: [{maker: Tarrock, number: T-1}]\n")]
    [InlineData("sources.yaml", "type: seller", "type: manual", "list type: type: manual\n | type: seller\n")]
    [InlineData("families.yaml", "listed: [lmp-1]", "listed: [lmp-3]", "f-1 assemblies / head / positions / lamp / listed: listed: [lmp-1]\n | listed: [lmp-3]\n")]
    [InlineData("families.yaml", "        source: list\n", "        source: list\n        locator: p. 1\n", "f-1 assemblies / head / positions / lamp / locator: - | locator: p. 1\n")]
    public void What_documents_is_offered_and_never_taken(string file, string ours, string theirs, string open)
    {
        using var here = Library("ferry-lane").Note();
        using var there = Library("velm-house").Note();
        here.Combine(there);
        there.Combine(here);
        there.Edit(file, t => t.Replace(ours, theirs, StringComparison.Ordinal));
        var before = here[file];
        here.Combine(there);
        Assert.Equal(before, here[file]);
        Assert.Equal([open], here.Open());
        Assert.Empty(here.Plan(there).Changes);
        // Who deletes the file has said no, and is not asked again.
        here.Delete(Path.Combine("conflicts", Path.GetFileName(Directory.GetFiles(Path.Combine(here.Folder, "conflicts"))[0])));
        here.Combine(there);
        Assert.Empty(here.Open());
        Assert.Equal(before, here[file]);
    }

    [Fact]
    public void Another_key_is_taken_and_safety_only_rises()
    {
        using var here = Library("ferry-lane").Note();
        using var there = Library("velm-house").Note();
        here.Combine(there);
        there.Combine(here);
        there.Edit("parts.yaml", t => t.Replace("safety: true", "safety: false\nlife: 4000 hours", StringComparison.Ordinal)).Edit("families.yaml", t => t.Replace("        kind: lamp\n", "        kind: lamp\n        safety: true\n", StringComparison.Ordinal));
        here.Combine(there);
        Assert.Contains("safety: true\nlife: 4000 hours\n", here["parts.yaml"], StringComparison.Ordinal);
        Assert.Contains("        kind: lamp\n        safety: true\n", here["families.yaml"], StringComparison.Ordinal);
        Assert.Empty(here.Open());
        there.Combine(here);
        Assert.Contains("safety: true\n", there["parts.yaml"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_lowered_flag_in_braces_is_not_taken_either()
    {
        using var here = Copy.Of("ferry-lane").With("f.yaml", "family: f\nname: F\nmaker: Velm\nassemblies: [{assembly: a, name: A, positions: [{position: p, name: P, kind: belt, safety: true}]}]\n").Note();
        using var there = here.Again();
        var before = here["f.yaml"];
        there.Edit("f.yaml", t => t.Replace("safety: true", "safety: false", StringComparison.Ordinal));
        here.Combine(there);
        Assert.Equal(before, here["f.yaml"]);
    }

    [Fact]
    public void A_record_of_ours_that_they_carry_comes_back_only_if_we_know_it()
    {
        const string claim = "claim: c-1\npart: lmp-1\nreplaces: lmp-2\nverdict: fits\nbasis: told\nby: R. Finch\ndate: 2026-01-05\n";
        using var here = Library("ferry-lane").With("claims/c-1.yaml", claim).Note();
        using var there = Library("velm-house").Note();
        there.Combine(here);
        there.With("from/ferry-lane/claims/c-2.yaml", claim.Replace("c-1", "c-2", StringComparison.Ordinal)).Edit("from/ferry-lane/claims/c-1.yaml", t => t.Replace("basis: told", "basis: seated", StringComparison.Ordinal));
        here.Combine(there);
        Assert.Equal(claim, here["claims/c-1.yaml"]);
        here.Delete("claims/c-1.yaml").Delete("conflicts/claim-ferry-lane--c-1.txt");
        here.Combine(there);
        Assert.Equal(claim, here["claims/c-1.yaml"]);
        Assert.False(here.Has("claims/c-2.yaml"));
        Assert.Contains("    claim: c-2\n", here["conflicts/claim-ferry-lane--c-2.txt"], StringComparison.Ordinal);
        // Who deletes the file has said no, and is not asked again.
        here.Delete("conflicts/claim-ferry-lane--c-2.txt");
        here.Combine(there);
        Assert.False(here.Has("conflicts/claim-ferry-lane--c-2.txt"));
    }

    [Fact]
    public void An_id_that_means_something_else_here_is_kept_aside()
    {
        using var here = Library("ferry-lane").With("m.yaml", "machine: thing\nfamily: f-1\nserial: 12\n").Note();
        using var there = Library("velm-house").With("m.yaml", "part: thing\nkind: gear\nname: Thing\n");
        var plan = here.Combine(there);
        Assert.Contains(plan.Decisions, d => d is { Outcome: CombineOutcome.KeptAside, Name: "thing" });
        Assert.Equal("machine: thing\nfamily: f-1\nserial: 12\n", here["m.yaml"]);
        Assert.Contains("    name: Thing\n", here["conflicts/part-thing.txt"], StringComparison.Ordinal);
    }
}

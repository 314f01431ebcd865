using Crossref.Site.Sharing.Combining;

namespace Crossref.Site.Tests.Sharing;

public class CombiningTests
{
    private const string Gears = "# Gears\r\npart: gear-1\r\nkind: gear\r\nname: First\r\nprice: 4\r\n---\r\n# the other\r\npart: gear-2\r\nkind: gear\r\nname: Second   \r\n\r\n";

    private static string Outcomes(CombinePlan plan) =>
        string.Join('\n', plan.Decisions.Where(d => d.Outcome is not (CombineOutcome.Alike or CombineOutcome.OnlyHere)).Select(d => $"{d.Outcome} {d.Name} {d.File} [{string.Join(", ", d.Keys)}]"));

    [Fact]
    public void A_change_replaces_its_record_and_leaves_every_other_byte()
    {
        using var ours = Copy.Of("ferry-lane").With("gears.yaml", "\uFEFF" + Gears).Note();
        using var theirs = ours.Again();
        theirs.Edit("gears.yaml", t => t.Replace("price: 4", "price: 5", StringComparison.Ordinal));
        Assert.Equal("TheirsNewer gear-1 gears.yaml [price]", Outcomes(ours.Combine(theirs)));
        Assert.Equal("\uFEFF" + Gears.Replace("price: 4", "price: 5", StringComparison.Ordinal), System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(Path.Combine(ours.Folder, "gears.yaml"))));
        Assert.Empty(ours.Plan(theirs).Changes);
        Assert.Equal("", Outcomes(theirs.Combine(ours)));
    }

    [Fact]
    public void Changes_of_both_sides_are_both_in_it_with_their_comments()
    {
        using var ours = Copy.Of("ferry-lane").With("gears.yaml", Gears).Note();
        using var theirs = ours.Again();
        ours.Edit("gears.yaml", t => t.Replace("name: First", "# was wrong\r\nname: Gear", StringComparison.Ordinal));
        theirs.Edit("gears.yaml", t => t.Replace("price: 4", "price: 5 # at the door", StringComparison.Ordinal));
        Assert.Equal("Merged gear-1 gears.yaml [price]", Outcomes(ours.Combine(theirs)));
        Assert.StartsWith("# Gears\r\npart: gear-1\r\nkind: gear\r\n# was wrong\r\nname: Gear\r\nprice: 5 # at the door\r\n---\r\n", ours["gears.yaml"], StringComparison.Ordinal);
        Assert.Equal("TheirsNewer gear-1 gears.yaml [name]", Outcomes(theirs.Combine(ours)));
        Assert.Equal(ours["gears.yaml"], theirs["gears.yaml"]);
    }

    [Fact]
    public void What_came_in_besides_what_is_to_be_chosen_is_named()
    {
        using var ours = Copy.Of("ferry-lane").With("gears.yaml", Gears).Note();
        using var theirs = ours.Again();
        ours.Edit("gears.yaml", t => t.Replace("price: 4", "price: 7", StringComparison.Ordinal));
        theirs.Edit("gears.yaml", t => t.Replace("price: 4", "price: 5\r\nlead-days: 9", StringComparison.Ordinal));
        var decision = Assert.Single(ours.Combine(theirs).Decisions, d => d.Outcome == CombineOutcome.ToChoose);
        Assert.Equal(("price", "Besides, theirs was taken at lead-days"), (string.Join(", ", decision.Keys), decision.Why));
        Assert.Contains("price: 7\r\nlead-days: 9", ours["gears.yaml"], StringComparison.Ordinal);
        // Where nothing else came in, nothing else is said.
        ours.Edit("gears.yaml", t => t.Replace("name: Second", "name: Twin", StringComparison.Ordinal));
        theirs.Edit("gears.yaml", t => t.Replace("name: Second", "name: Double", StringComparison.Ordinal));
        Assert.Equal("", Assert.Single(ours.Combine(theirs).Decisions, d => d.Outcome == CombineOutcome.ToChoose).Why);
    }

    [Fact]
    public void A_choice_made_in_one_copy_wins_over_the_open_conflict_in_the_other()
    {
        using var ours = Copy.Of("ferry-lane").With("gears.yaml", Gears).Note();
        using var theirs = ours.Again();
        ours.Edit("gears.yaml", t => t.Replace("price: 4", "price: 7", StringComparison.Ordinal));
        theirs.Edit("gears.yaml", t => t.Replace("price: 4", "price: 5", StringComparison.Ordinal));
        Assert.Equal("ToChoose gear-1 gears.yaml [price]", Outcomes(ours.Combine(theirs)));
        theirs.Combine(ours);
        Assert.Equal(["gear-1 price: price: 5\n | price: 7\n"], ours.Open());
        Assert.Equal(ours.Open(), theirs.Open());
        Assert.Equal(ours["gears.yaml"], theirs["gears.yaml"]);
        // Another key is edited: the conflict stays. The lower price is written: it is settled, although the file is still there.
        theirs.Edit("gears.yaml", t => t.Replace("name: First", "name: Gear", StringComparison.Ordinal)).Note();
        Assert.Single(theirs.Open());
        theirs.Edit("gears.yaml", t => t.Replace("price: 7", "price: 5", StringComparison.Ordinal)).Note();
        Assert.Empty(theirs.Open());
        ours.Combine(theirs);
        Assert.Contains("price: 5", ours["gears.yaml"], StringComparison.Ordinal);
        Assert.Empty(ours.Open());
    }

    [Fact]
    public void Deleting_the_file_of_a_conflict_settles_what_is_in_force()
    {
        using var ours = Copy.Of("ferry-lane").With("gears.yaml", Gears).Note();
        using var theirs = ours.Again();
        ours.Edit("gears.yaml", t => t.Replace("price: 4", "price: 7", StringComparison.Ordinal));
        theirs.Edit("gears.yaml", t => t.Replace("price: 4", "price: 5", StringComparison.Ordinal));
        ours.Combine(theirs);
        ours.Delete("conflicts/part-gear-1.txt");
        Assert.Equal("TheirsNewer gear-1 gears.yaml [price]", Outcomes(theirs.Combine(ours)));
        Assert.Empty(theirs.Open());
        Assert.Empty(theirs.Plan(ours).Changes);
        ours.Combine(theirs);
        Assert.Empty(ours.Open());
    }

    [Fact]
    public void A_note_is_merged_by_its_front_matter_and_its_body_as_a_whole()
    {
        using var ours = Copy.Of("ferry-lane").With("notes/squeal.md", "---\ntitle: Squeal\n---\nOil it.\n").Note();
        using var theirs = ours.Again();
        ours.Edit("notes/squeal.md", t => t.Replace("title: Squeal", "title: The squeal", StringComparison.Ordinal));
        theirs.Edit("notes/squeal.md", t => t.Replace("Oil it.", "Never oil it.", StringComparison.Ordinal));
        ours.Combine(theirs);
        Assert.Equal("---\ntitle: The squeal\n---\nNever oil it.\n", ours["notes/squeal.md"]);
        theirs.Combine(ours);
        ours.Edit("notes/squeal.md", t => t.Replace("Never", "Hardly ever", StringComparison.Ordinal));
        theirs.Edit("notes/squeal.md", t => t.Replace("it.", "that.", StringComparison.Ordinal));
        ours.Combine(theirs);
        Assert.Single(ours.Open());
    }

    [Fact]
    public void What_one_copy_lost_comes_back_and_what_it_retired_stays_retired()
    {
        using var ours = Copy.Of("ferry-lane").With("gears.yaml", Gears).With("claims/c-1.yaml", "claim: c-1\npart: gear-1\nreplaces: gear-2\nverdict: fits\nbasis: seated\nby: M. Orr\ndate: 2026-02-11\n").Note();
        using var theirs = ours.Again();
        ours.Delete("claims/c-1.yaml").Edit("gears.yaml", t => t.Replace("price: 4", "price: 4\r\nretired: true", StringComparison.Ordinal));
        theirs.Edit("gears.yaml", t => t.Replace("price: 4", "price: 9", StringComparison.Ordinal));
        Assert.Equal("Restored ferry-lane:c-1 claims/c-1.yaml []\nMerged gear-1 gears.yaml [price]", string.Join('\n', Outcomes(ours.Combine(theirs)).Split('\n').OrderByDescending(l => l, StringComparer.Ordinal)));
        Assert.Contains("price: 9\r\nretired: true\r\n", ours["gears.yaml"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("crossref history 9 0\n", "is not one that this tool knows")]
    [InlineData("crossref history 1 0000\nabc", "is damaged")]
    [InlineData("", "is not one that this tool knows")]
    public void A_history_that_cannot_be_used_is_said_and_begun_anew(string file, string said)
    {
        using var ours = Copy.Of("ferry-lane").With("gears.yaml", Gears).Note();
        using var theirs = ours.Again();
        ours.With(".crossref/history", file).Edit("gears.yaml", t => t.Replace("price: 4", "price: 7", StringComparison.Ordinal));
        var plan = ours.Combine(theirs);
        Assert.Contains(plan.Diagnostics, d => d.Message.Contains(said, StringComparison.Ordinal));
        // Nobody knows which is newer: both are kept.
        Assert.Equal(["gear-1 price: price: 4\n | price: 7\n"], ours.Open());
        Assert.DoesNotContain(ours.Plan(theirs).Diagnostics, d => d.Message.Contains("history", StringComparison.Ordinal));
    }

    [Fact]
    public void Pictures_come_along_and_none_is_replaced()
    {
        const string part = "part: gear-3\nkind: gear\nname: Third\npictures: [{file: pictures/gear.png, shows: Gear}]\n";
        using var ours = Copy.Of("ferry-lane").With("pictures/gear.png", "ours").Note();
        using var theirs = Copy.Of("ferry-lane").With("pictures/gear.png", "theirs").With("pictures/other.png", "unused").With("parts.yaml", part);
        var plan = ours.Combine(theirs);
        Assert.Equal("ours", ours["pictures/gear.png"]);
        Assert.Equal("theirs", ours[Assert.Single(plan.Decisions, d => d.Outcome == CombineOutcome.Picture).Name]);
        Assert.False(ours.Has("pictures/other.png"));
        Assert.Empty(ours.Plan(theirs).Changes);
        using var foreign = Copy.Of("velm-house").With("pictures/gear.png", "velm").With("parts.yaml", part.Replace("gear-3", "gear-4", StringComparison.Ordinal));
        ours.Combine(foreign);
        Assert.Equal("velm", ours["from/velm-house/pictures/gear.png"]);
        Assert.Empty(ours.Plan(foreign).Changes);
    }
}

using Crossref.Core.Records;
using Crossref.Site.Sharing;
using Crossref.Site.Sharing.Histories;

namespace Crossref.Site.Tests.Sharing;

/// <summary>What somebody chose is a later state than those that it was chosen from, in whatever order copies come together.</summary>
public class ChoosingTests
{
    private const int Runs = 400;

    private static string[] Open(RecordHistory history) => [.. history.Conflicts.Select(c => c.Key)];

    // Every text of every key that is open; for a text that differs from copy to copy this is what must be the same.
    private static string Shown(RecordHistory history) =>
        history.Text + string.Join('\n', history.Conflicts.Select(c => $"{Keys.Shown(c.Key)}: {string.Join(" | ", c.Choices.Select(v => v.Text))}"));

    private static IEnumerable<(Random Random, Edits Edits, RecordHistory Joined, string Where)> Disputes()
    {
        for (var seed = 0; seed < Runs; seed++)
        {
            var random = new Random(seed);
            var edits = new Edits(random);
            var begin = RecordHistory.Begin(RecordType.Family, Edits.Family, "ferry-lane", "2026-01-01");
            var (a, b) = (begin.Note(edits.Edit(begin.Text, random.Next(2, 9)), "ferry-lane", "2026-02-11", settles: false), begin.Note(edits.Edit(begin.Text, random.Next(2, 9)), "ferry-lane", "2026-02-12", settles: false));
            var joined = Joining.Join(a, b);
            if (joined.Conflicts.Count > 0) yield return (random, edits, joined, $"seed {seed}\n{joined.Text}");
        }
    }

    [Fact]
    public void What_was_chosen_is_in_force_and_all_else_stays_open()
    {
        var (count, left) = (0, 0);
        foreach (var (random, _, joined, where) in Disputes())
        {
            var open = joined.Conflicts[random.Next(joined.Conflicts.Count)];
            var number = random.Next(open.Choices.Count);
            var chosen = joined.Choose(open, number, "ferry-lane", "2026-03-01");
            Assert.True(!Open(chosen).Contains(open.Key) || open.Kept is not null && Open(joined).Count(k => k == open.Key) > 1, where);
            if (open.Kept is null) Assert.True(chosen.Shown.Values.GetValueOrDefault(open.Key)?.TrimEnd() == open.Choices[number].Text?.TrimEnd(), where);
            // Nothing opens that was not open, and what is open elsewhere stays, unless it stood below what was taken out.
            Assert.True(open.Choices[number].Text is null || open.Kept is not null || Open(joined).Where(k => k != open.Key).SequenceEqual(Open(chosen)), where);
            Assert.True(Open(chosen).Length <= Open(joined).Length + 1, where);
            count++;
            left += chosen.Conflicts.Count > 0 ? 1 : 0;
        }
        Assert.InRange(count, Runs / 4, Runs);
        Assert.InRange(left, Runs / 40, Runs);
    }

    [Fact]
    public void A_choice_survives_copies_that_still_have_it_open_in_any_order()
    {
        foreach (var (random, edits, joined, where) in Disputes())
        {
            var open = joined.Conflicts[random.Next(joined.Conflicts.Count)];
            var chosen = joined.Choose(open, random.Next(open.Choices.Count), "ferry-lane", "2026-03-01");
            foreach (var again in new[] { Joining.Join(chosen, joined), Joining.Join(joined, chosen), Joining.Join(Joining.Join(joined, chosen), joined) })
                Assert.True(Shown(chosen) == Shown(again), $"{where}\n----\n{chosen.Text}\n----\n{again.Text}");
            // A third copy went on with it open, and a fourth chose too.
            var third = joined.Note(edits.Edit(joined.Text, 2), "ferry-lane", "2026-03-02", settles: false);
            var fourth = joined.Choose(open, random.Next(open.Choices.Count), "ferry-lane", "2026-03-03");
            var one = Joining.Join(Joining.Join(chosen, third), fourth);
            Assert.True(Shown(one) == Shown(Joining.Join(chosen, Joining.Join(fourth, third))), where);
            Assert.True(Shown(one) == Shown(Joining.Join(Joining.Join(third, fourth), chosen)), where);
            Assert.True(Shown(one) == Shown(Joining.Join(one, joined)), where);
        }
    }

    [Fact]
    public void Copies_that_choose_differently_are_open_again_and_those_that_choose_alike_are_not()
    {
        var differing = 0;
        foreach (var (random, _, joined, where) in Disputes())
        {
            var open = joined.Conflicts[random.Next(joined.Conflicts.Count)];
            var (mine, theirs) = (random.Next(open.Choices.Count), random.Next(open.Choices.Count));
            var (a, b) = (joined.Choose(open, mine, "ferry-lane", "2026-03-01"), joined.Choose(open, theirs, "ferry-lane", "2026-03-02"));
            var both = Joining.Join(a, b);
            Assert.True(Shown(both) == Shown(Joining.Join(b, a)), where);
            if (mine == theirs) Assert.True(Shown(both) == Shown(a), where);
            else if (open.Kept is null)
            {
                Assert.True(Open(both).Contains(open.Key), where);
                var texts = both.Conflicts.First(c => c.Key == open.Key).Choices.Select(c => c.Text?.TrimEnd()).ToList();
                Assert.Contains(open.Choices[mine].Text?.TrimEnd(), texts);
                Assert.Contains(open.Choices[theirs].Text?.TrimEnd(), texts);
                differing++;
            }
        }
        Assert.InRange(differing, Runs / 20, Runs);
    }

    [Fact]
    public void Copies_of_a_folder_come_to_what_was_chosen_and_differ_again_when_both_choose()
    {
        using var start = Copy.Of("ferry-lane").With("gears.yaml", "# Gears\r\npart: gear-1\r\nkind: gear\r\nname: First # so\r\nprice: 4\r\n---\r\npart: gear-2\r\nkind: gear\r\nname: Second  \r\n").Note();
        using var a = start.Again();
        using var b = start.Again();
        using var c = start.Again();
        a.Edit("gears.yaml", t => t.Replace("price: 4", "price: 7", StringComparison.Ordinal).Replace("name: Second", "name: Two", StringComparison.Ordinal));
        b.Edit("gears.yaml", t => t.Replace("price: 4", "price: 5", StringComparison.Ordinal).Replace("name: Second", "name: Zwo", StringComparison.Ordinal));
        a.Combine(b);
        b.Combine(a);
        c.Combine(a);
        Assert.Equal(a.Open(), c.Open());
        Choose(a, "gear-1", 2);
        Assert.Equal("# Gears\r\npart: gear-1\r\nkind: gear\r\nname: First # so\r\nprice: 5\r\n---\r\npart: gear-2\r\nkind: gear\r\nname: Zwo  \r\n", a["gears.yaml"]);
        Assert.False(a.Has("conflicts/part-gear-1.txt"));
        Assert.Single(a.Open());
        // A copy that has it open learns it, whichever way they meet.
        b.Combine(a);
        a.Combine(c);
        c.Combine(b);
        foreach (var copy in new[] { a, b, c })
        {
            Assert.Equal(a["gears.yaml"], copy["gears.yaml"]);
            Assert.Equal(a.Open(), copy.Open());
        }
        // The second one is chosen in two copies, differently.
        Choose(b, "gear-2", 1);
        Choose(c, "gear-2", 2);
        Assert.Empty(b.Open());
        Assert.Empty(c.Open());
        b.Combine(c);
        c.Combine(b);
        a.Combine(c);
        Assert.Equal(["gear-2 name: name: Two\n | name: Zwo\n"], b.Open());
        Assert.Equal(b.Open(), c.Open());
        Assert.Equal(b.Open(), a.Open());
        Assert.Equal(b["gears.yaml"], a["gears.yaml"]);
        Choose(a, "gear-2", 1);
        b.Combine(a);
        Assert.Empty(b.Open());
        Assert.Empty(b.Plan(c).Changes);
    }

    [Fact]
    public void What_another_library_offers_is_in_force_once_it_is_chosen()
    {
        const string part = "part: gear-1\nkind: gear\nname: First\nsource: list\n---\nsource: list\ntype: seller\ntitle: List\n---\nsource: other\ntype: seller\ntitle: Other\n";
        using var here = Copy.Of("ferry-lane").With("p.yaml", part).Note();
        using var there = Copy.Of("velm-house").With("p.yaml", part).Note();
        there.Combine(here);
        there.Edit("p.yaml", t => t.Replace("source: list\n---", "source: other\n---", StringComparison.Ordinal));
        here.Combine(there);
        Assert.Equal(["gear-1 source: source: list\n | source: other\n"], here.Open());
        Choose(here, "gear-1", 2);
        Assert.StartsWith("part: gear-1\nkind: gear\nname: First\nsource: other\n---", here["p.yaml"], StringComparison.Ordinal);
        Assert.Empty(here.Open());
        Assert.Empty(here.Plan(there).Changes);
    }

    [Fact]
    public void What_cannot_be_taken_as_it_is_can_only_be_declined()
    {
        using var here = Copy.Of("ferry-lane").With("m.yaml", "part: thing\nkind: gear\nname: Thing\n").Note();
        using var there = Copy.Of("velm-house").With("m.yaml", "source: thing\ntype: seller\ntitle: Thing\n");
        here.Combine(there);
        var chooser = Chooser.Read(here.Folder, Copy.Day);
        var open = Assert.Single(chooser.Open);
        Assert.Contains("kept aside", chooser.Choose(open, open.Keys[0], 2), StringComparison.Ordinal);
        Choose(here, "thing", 1);
        Assert.Empty(here.Open());
        Assert.Empty(here.Plan(there).Changes);
    }

    [Fact]
    public void Records_that_could_only_be_kept_whole_are_chosen_whole()
    {
        using var here = Copy.Of("ferry-lane").With("p.yaml", "part: gear-1\nkind: gear\nname: First\n").Note();
        using var there = here.Again();
        here.Edit("p.yaml", t => t + "life: 4 sheets\n");
        there.With("p.yaml", "{part: gear-1, kind: gear, name: Erstes}\n");
        here.Combine(there);
        var texts = Assert.Single(Chooser.Read(here.Folder, Copy.Day).Open).Keys;
        Assert.Equal("", Assert.Single(texts).Key);
        var wanted = texts[0].Choices.Select(c => c.Text).ToList().FindIndex(t => t!.StartsWith('{')) + 1;
        Choose(here, "gear-1", wanted);
        Assert.Equal("{part: gear-1, kind: gear, name: Erstes}\n", here["p.yaml"]);
        Assert.Empty(here.Open());
        there.Combine(here);
        Assert.Equal(here["p.yaml"], there["p.yaml"]);
        Assert.Empty(there.Open());
    }

    private static void Choose(Copy copy, string record, int number)
    {
        var chooser = Chooser.Read(copy.Folder, Copy.Day);
        var conflict = chooser.Open.Single(c => c.Name == record);
        Assert.Null(chooser.Choose(conflict, Assert.Single(conflict.Keys), number));
        copy.Apply(chooser.Changes);
    }
}

using Crossref.Core.Records;
using Crossref.Site.Sharing.Histories;
using Crossref.Site.Sharing.Texts;

namespace Crossref.Site.Tests.Sharing;

/// <summary>Random copies of one record, edited and joined in any order.</summary>
public class JoiningTests
{
    private const int Runs = 500;

    private static RecordHistory Begin() => RecordHistory.Begin(RecordType.Family, Edits.Family, "ferry-lane", "2026-01-01");

    private static RecordHistory Note(RecordHistory history, string text, string date = "2026-02-11") => history.Note(text, "ferry-lane", date, settles: false);

    private static string Conflicts(RecordHistory history) =>
        string.Join('\n', history.Shown.Conflicts.Select(c => $"{Keys.Shown(c.Key)}: {string.Join(" | ", c.Choices.Select(v => v.Text))}"));

    private static void Same(RecordHistory one, RecordHistory other, string what)
    {
        Assert.True(one.Shown.Text == other.Shown.Text, $"{what}:\n{one.Shown.Text}\n----\n{other.Shown.Text}");
        Assert.Equal(Conflicts(one), Conflicts(other));
    }

    [Fact]
    public void What_was_noted_is_what_is_shown()
    {
        for (var seed = 0; seed < Runs; seed++)
        {
            var edits = new Edits(new Random(seed));
            var (history, text) = (Begin(), Edits.Family);
            for (var step = 0; step < 6; step++)
            {
                text = edits.Edit(text, 3);
                history = Note(history, text);
                Assert.True(text == history.Shown.Text, $"seed {seed}\n{text}\n----\n{history.Shown.Text}");
                Assert.Empty(history.Shown.Conflicts);
            }
        }
    }

    [Fact]
    public void Copies_joined_in_any_order_say_the_same_and_leave_the_same_to_be_chosen()
    {
        var (conflicts, merged) = (0, 0);
        for (var seed = 0; seed < Runs; seed++)
        {
            var random = new Random(seed);
            var edits = new Edits(random);
            // A few copies, edited and joined at random, as sticks go to and fro.
            var copies = Enumerable.Range(0, 3).Select(_ => Begin()).ToArray();
            for (var step = 0; step < 6; step++)
            {
                var (to, from) = (random.Next(3), random.Next(3));
                copies[to] = random.Next(3) == 0 ? Joining.Join(copies[to], copies[from]) : Note(copies[to], edits.Edit(copies[to].Shown.Text, 1 + random.Next(3)));
            }
            var (a, b, c) = (copies[0], copies[1], copies[2]);
            var ab = Joining.Join(a, b);
            Same(ab, Joining.Join(b, a), $"seed {seed}: a with b, b with a");
            Same(ab, Joining.Join(ab, b), $"seed {seed}: twice");
            Same(ab, Joining.Join(a, ab), $"seed {seed}: back again");
            var abc = Joining.Join(ab, c);
            Same(abc, Joining.Join(a, Joining.Join(b, c)), $"seed {seed}: three");
            Same(abc, Joining.Join(Joining.Join(c, a), b), $"seed {seed}: three, other way");
            // What comes out is a record that can be taken apart again.
            if (abc.Shown.Conflicts.Count == 0) Assert.Equal(abc.Shown.Text, OutlineReader.Record(abc.Shown.Text).Text);
            Assert.DoesNotContain(OutlineReader.Record(abc.Shown.Text).Entries, e => e.Key == "=");
            conflicts += abc.Shown.Conflicts.Count > 0 ? 1 : 0;
            merged += copies.All(x => x.Shown.Text != abc.Shown.Text) ? 1 : 0;
        }
        Assert.InRange(conflicts, Runs / 20, Runs);
        Assert.InRange(merged, Runs / 4, Runs);
    }
}

using Crossref.Core.Records;
using Crossref.Site.Sharing.Histories;

namespace Crossref.Site.Tests.Sharing;

public class NaiveMergeTests
{
    private const int Runs = 1500;

    [Fact]
    public void A_merge_over_a_common_state_says_what_a_slow_merge_of_trees_says()
    {
        var (conflicts, merged) = (0, 0);
        for (var seed = 0; seed < Runs; seed++)
        {
            var random = new Random(seed);
            var edits = new Edits(random, hasComments: false);
            var origin = edits.Edit(Edits.Family, 2);
            var begin = RecordHistory.Begin(RecordType.Family, origin, "ferry-lane", "2026-01-01");
            var (one, other) = (edits.Edit(origin, random.Next(1, 5)), edits.Edit(origin, random.Next(1, 5)));
            var joined = Joining.Join(begin.Note(one, "ferry-lane", "2026-02-11", settles: false), begin.Note(other, "ferry-lane", "2026-02-12", settles: false));
            var (values, differing) = NaiveMerge.Merge(origin, one, other);
            var found = NaiveMerge.Flat(joined.Shown.Text);
            var where = $"seed {seed}\n{origin}\n----\n{one}\n----\n{other}\n----\n{joined.Shown.Text}";
            Assert.True(differing.SequenceEqual(joined.Shown.Conflicts.Select(c => Keys.Shown(c.Key)).Order(StringComparer.Ordinal)), $"{string.Join("; ", differing)} against {string.Join("; ", joined.Shown.Conflicts.Select(c => Keys.Shown(c.Key)))} {where}");
            foreach (var path in values.Keys.Union(found.Keys).Where(p => !differing.Any(d => p == d || p.StartsWith(d + " / ", StringComparison.Ordinal))))
                Assert.True(values.GetValueOrDefault(path) == found.GetValueOrDefault(path), $"{path}: {where}");
            conflicts += differing.Count > 0 ? 1 : 0;
            merged += differing.Count == 0 && joined.Shown.Text != one && joined.Shown.Text != other ? 1 : 0;
        }
        Assert.InRange(conflicts, Runs / 20, Runs);
        Assert.InRange(merged, Runs / 4, Runs);
    }
}

using Crossref.Core.Arithmetic;
using CsCheck;
using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Size = Crossref.Core.Records.Size;

namespace Crossref.Core.Tests.Sizes;

public sealed class SizeSearchTests
{
    [Fact]
    public void It_finds_what_going_through_every_part_finds()
    {
        var (found, passed) = (0, 0);
        (from kind in RandomParts.Kinds
         from centre in RandomParts.OneOf(RandomParts.Centres)
         from library in RandomParts.Of(kind, centre)
         from sizes in RandomParts.Sizes(kind, centre)
         from left in Gen.Int[1, 127]
         from doubtful in Gen.Int[0, 9]
         select (kind, library, doubtful: kind.Deciding.ElementAtOrDefault(doubtful), sizes: sizes.Where((_, i) => ((left >> i) & 1) == 1).ToDictionary(s => s.Key, s => s.Value))).Sample(x =>
        {
            var naive = new List<(Part Part, List<string> Agrees, List<string> Unknown)>();
            foreach (var part in x.library.Parts.Values)
            {
                var (agrees, unknown, differs) = (new List<string>(), new List<string>(), false);
                foreach (var attribute in x.kind.Deciding)
                {
                    if (!x.sizes.TryGetValue(attribute, out var held)) continue;
                    if (!part.Sizes.TryGetValue(attribute, out var size)) unknown.Add(attribute);
                    else if (Same(x.kind, attribute, held, size)) (attribute == x.doubtful ? unknown : agrees).Add(attribute);
                    else differs = true;
                }
                if (!part.Retired && !differs && agrees.Count > 0) naive.Add((part, agrees, unknown));
            }
            naive.Sort((a, b) => a.Agrees.Count != b.Agrees.Count ? b.Agrees.Count - a.Agrees.Count
                : a.Part.Sizes.Count != b.Part.Sizes.Count ? b.Part.Sizes.Count - a.Part.Sizes.Count
                : string.CompareOrdinal(a.Part.Id, b.Part.Id));
            var answer = SizeSearch.Find(x.library, new Sought(x.kind, x.sizes) { Doubtful = x.doubtful });
            Assert.Equal(
                naive.Select(n => $"{n.Part.Id}: {string.Join(' ', n.Agrees)}; {string.Join(' ', n.Unknown)}"),
                answer.Select(f => $"{f.Part}: {string.Join(' ', f.Agreeing)}; {string.Join(' ', f.Unknown)}"));
            Interlocked.Add(ref found, naive.Count);
            Interlocked.Add(ref passed, x.library.Parts.Count - naive.Count);
        }, iter: 3000);
        Assert.True(found > 1000, $"only {found} found");
        Assert.True(passed > 1000, $"only {passed} passed over");
    }

    private static bool Same(PartKind kind, string attribute, Size one, Size other)
    {
        if (one.Quantity is not { } a || other.Quantity is not { } b) return SizeWord.Same(attribute, one.Text, other.Text);
        var width = WorkingTolerance.Of(kind, attribute, Math.Max((double)a.Value, (double)b.Value)).Width;
        var doubt = Math.Sqrt(Math.Pow((double)a.Uncertainty, 2) + Math.Pow((double)b.Uncertainty, 2));
        return Math.Abs((double)a.Value - (double)b.Value) <= Math.Max(width, doubt) + 1e-9;
    }
}

using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Bearings;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

/// <summary>Measured sizes: doubt never rules out, and what is not known never agrees.</summary>
public class BearingMatchTests
{
    private static readonly Gen<double> Sizes = Gen.OneOf(Gen.Double[2, 60], Gen.Int[2, 60].Select(i => (double)i));
    private static readonly Gen<Interval> Measured = Gen.Select(Sizes, Gen.Double[0, 1], Interval.Around);
    private static readonly Gen<Interval?> MaybeMeasured = Gen.OneOf(Measured.Select(m => (Interval?)m), Gen.Const((Interval?)null));

    [Fact]
    public void A_wider_doubt_never_turns_agreement_into_difference() =>
        Gen.Select(Measured, Measured, Gen.Double[0, 5], Gen.Double[0, 5]).Sample((size, limits, below, above) =>
        {
            var narrow = BearingTolerance.Check(size, limits);
            var wide = BearingTolerance.Check(new Interval(size.Low - below, size.High + above), limits);
            return (!narrow.Agrees || wide.Agrees) && Math.Abs(wide.Off) <= Math.Abs(narrow.Off);
        });

    [Fact]
    public void A_wider_doubt_never_loses_a_bearing() =>
        Gen.Select(MaybeMeasured, MaybeMeasured, MaybeMeasured, Gen.Double[0, 3]).Sample((bore, outside, width, more) =>
        {
            var narrow = Possible(bore, outside, width);
            var wide = Possible(Wider(bore, more), Wider(outside, more), Wider(width, more));
            return narrow.IsSubsetOf(wide);
        });

    [Fact]
    public void Leaving_a_size_out_never_loses_a_bearing_and_never_agrees() =>
        Gen.Select(Measured, Measured, Measured).Sample((bore, outside, width) =>
        {
            var all = Possible(bore, outside, width);
            return all.IsSubsetOf(Possible(null, outside, width)) && all.IsSubsetOf(Possible(bore, null, width)) && all.IsSubsetOf(Possible(bore, outside, null))
                && BearingMatch.All(bore, null, width).All(m => !m.Outside.Agrees && !m.Outside.Differs && m.Outside.ToString() == "unknown");
        });

    [Fact]
    public void A_size_without_limits_is_unknown() => Assert.Equal("unknown", BearingTolerance.Check(5.0, null).ToString());

    // By hand: 12.02 is 0.02 above the largest bore of 6001, 11.98 is 0.012 below the smallest.
    [Theory]
    [InlineData(12.02, 0, "0.02 mm over")]
    [InlineData(11.98, 0, "0.012 mm under")]
    [InlineData(12.02, 0.02, "agrees")]
    [InlineData(11.98, 0.02, "agrees")]
    [InlineData(11.992, 0, "agrees")]
    public void A_bore_is_held_against_its_limits(double size, double uncertainty, string says) =>
        Assert.Equal(says, BearingMatch.All(Interval.Around(size, uncertainty), null, null).Single(m => m.Row.Designation == "6001").Bore.ToString());

    [Fact]
    public void The_closest_comes_first() =>
        Gen.Select(Measured, MaybeMeasured, MaybeMeasured).Sample((bore, outside, width) =>
        {
            var matches = BearingMatch.All(bore, outside, width);
            return matches.Count == BearingTable.Rows.Count && matches.Zip(matches.Skip(1)).All(p => p.First.Distance <= p.Second.Distance)
                && matches.All(m => m.Possible == (m.Distance == 0));
        });

    private static Interval? Wider(Interval? size, double more) => size is { } known ? new Interval(known.Low - more, known.High + more) : null;

    private static HashSet<string> Possible(Interval? bore, Interval? outside, Interval? width) =>
        [.. BearingMatch.All(bore, outside, width).Where(m => m.Possible).Select(m => m.Row.Designation)];
}

using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

/// <summary>The tables of limits and clearances against what must hold whatever their source.</summary>
public class BearingBandTests
{
    private static readonly string[] Groups = ["C2", "CN", "C3", "C4", "C5"];

    [Fact]
    public void The_tables_break_no_rule()
    {
        Assert.Empty(BrokenLimits(BearingTolerance.Bands));
        Assert.Empty(BrokenClearances(RadialClearance.Bands));
    }

    // Every value changed by 1, 2, 5 and 10 µm either way: the rules catch 75.6 % in the limits and 47.8 % in the clearances.
    // A bound that has room to its neighbours slips unseen; BearingReferenceTests compare every value with the handbooks.
    [Theory]
    [InlineData(false, 0.75)]
    [InlineData(true, 0.47)]
    public void A_planted_wrong_value_is_caught(bool clearances, double share)
    {
        var bands = clearances ? RadialClearance.Bands : BearingTolerance.Bands;
        Func<IReadOnlyList<ToleranceBand>, IEnumerable<string>> broken = clearances ? BrokenClearances : BrokenLimits;
        var planted = Enumerable.Range(0, bands.Count).SelectMany(i => new[] { -10.0, -5, -2, -1, 1, 2, 5, 10 }.SelectMany(slip => new[]
        {
            bands.Select((b, at) => at == i ? b with { Micrometres = b.Micrometres with { Low = b.Micrometres.Low + slip } } : b).ToList(),
            bands.Select((b, at) => at == i ? b with { Micrometres = b.Micrometres with { High = b.Micrometres.High + slip } } : b).ToList(),
        })).ToList();
        var caught = (double)planted.Count(p => broken(p).Any()) / planted.Count;
        Assert.True(caught >= share, $"{caught:P1} of {planted.Count} caught");
    }

    // ISO 492: nothing above nominal, and a larger bearing is never held closer; bands follow on one another.
    private static IEnumerable<string> BrokenLimits(IReadOnlyList<ToleranceBand> bands)
    {
        foreach (var symbol in bands.GroupBy(b => b.Name))
        {
            foreach (var band in symbol.Where(b => b.Micrometres.High != 0 || b.Micrometres.Low >= 0)) yield return $"{band.Name} {band.Range}";
            foreach (var (one, next) in symbol.Zip(symbol.Skip(1)))
                if (one.Including != next.Over || next.Micrometres.Low > one.Micrometres.Low) yield return $"{next.Name} {next.Range} after {one.Range}";
        }
    }

    // ISO 5753-1: the groups rise in their order and overlap or touch; in a group no bound falls with the bore.
    private static IEnumerable<string> BrokenClearances(IReadOnlyList<ToleranceBand> bands)
    {
        foreach (var bore in bands.GroupBy(b => b.Range))
        {
            var groups = bore.OrderBy(b => Array.IndexOf(Groups, b.Name)).Select(b => b.Micrometres).ToList();
            if (groups.Any(g => g.Low < 0 || g.Low >= g.High)) yield return bore.Key;
            foreach (var (one, next) in groups.Zip(groups.Skip(1)))
                if (next.Low <= one.Low || next.High <= one.High || next.Low > one.High) yield return $"{bore.Key}: groups out of order";
        }
        foreach (var group in bands.GroupBy(b => b.Name))
            foreach (var (one, next) in group.Zip(group.Skip(1)))
                if (one.Including != next.Over || next.Micrometres.Low < one.Micrometres.Low || next.Micrometres.High < one.Micrometres.High) yield return $"{group.Key} {next.Range} after {one.Range}";
    }
}

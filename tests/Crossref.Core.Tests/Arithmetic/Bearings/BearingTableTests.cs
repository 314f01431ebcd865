using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

/// <summary>The table of bearings against rules and routes that do not know the handbooks, and what those rules are worth.</summary>
public class BearingTableTests
{
    private static readonly decimal[] Slips = [-2, -1, -0.5m, 0.5m, 1, 2];

    [Fact]
    public void The_table_breaks_no_rule() => Assert.Empty(BearingRules.Broken(BearingTable.Rows));

    [Fact]
    public void Every_row_of_the_CAD_libraries_is_there() =>
        Assert.Empty(BearingReference.Drawn.Keys.Except(BearingTable.Rows.Select(r => r.Designation)));

    // Every row, every dimension, six slips each, some 3500 wrong rows. The rules alone catch all wrong bores, 90.1 % of the
    // wrong outside diameters and 87.8 % of the wrong widths; what they miss sits at a series' end or in wide steps, and only
    // the handbook rows show it (BearingReferenceTests compare every one).
    [Theory]
    [InlineData("bore", 1.00)]
    [InlineData("outside", 0.90)]
    [InlineData("width", 0.87)]
    public void A_planted_wrong_row_is_caught(string dimension, double share)
    {
        var planted = BearingTable.Rows.SelectMany((row, index) => Slips.Select(slip => (index, Wrong: Changed(row, dimension, slip)))).Where(p => p.Wrong.Width > 0).ToList();
        var missed = planted.Where(p => !BearingRules.Broken([.. BearingTable.Rows.Select((r, i) => i == p.index ? p.Wrong : r)]).Any()).ToList();
        var caught = 1 - (double)missed.Count / planted.Count;
        Assert.True(caught >= share, $"{dimension}: {caught:P1} of {planted.Count} caught; missed {string.Join(", ", missed.Select(m => $"{m.Wrong.Designation} {m.Wrong.Bore}x{m.Wrong.Outside}x{m.Wrong.Width}"))}");
    }

    private static BearingRow Changed(BearingRow row, string dimension, decimal slip) => dimension switch
    {
        "bore" => row with { Bore = row.Bore + slip },
        "outside" => row with { Outside = row.Outside + slip },
        _ => row with { Width = row.Width + slip },
    };
}

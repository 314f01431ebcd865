using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Tests.Arithmetic.Reference;

namespace Crossref.Core.Tests.Arithmetic.Limits;

public class StandardToleranceTests
{
    [Fact]
    public void Every_published_grade_comes_out()
    {
        var rows = ReferenceRow.Read("fits-iso286.csv").Where(r => r["kind"] == "IT").ToList();
        Assert.Equal(7 * 8, rows.Count);
        foreach (var row in rows)
            foreach (var size in new[] { row.Number("over_mm") + 0.001, row.Number("incl_mm") })
                Assert.True(Math.Abs(StandardTolerance.Width((int)row.Number("grade_from"), size)!.Value * 1000 - row.Number("value_um")) < 1e-9, $"{size} mm: {row}");
    }

    [Theory]
    [InlineData(4, 25)]
    [InlineData(12, 25)]
    [InlineData(7, 0)]
    [InlineData(7, -3)]
    [InlineData(7, 120.001)]
    public void Outside_the_table_the_width_is_unknown(int grade, double nominal) => Assert.Null(StandardTolerance.Width(grade, nominal));

    [Fact]
    public void A_size_on_the_end_of_a_band_belongs_to_the_band_below_also_after_binary_rounding()
    {
        Assert.Equal(0.021, StandardTolerance.Width(7, 30));
        Assert.Equal(0.021, StandardTolerance.Width(7, 30 + 1e-12));
        Assert.Equal(0.025, StandardTolerance.Width(7, 30.001));
    }

    // ISO 286-1: i = 0.45 × ∛D + 0.001 × D, D the geometric mean of the band; IT5 to IT11 are 7, 10, 16, 25, 40, 64, 100 times i.
    // The standard rounds in steps of its own and sets the band up to 3 mm by hand: these widths are not the formula's nearest number.
    private static readonly string[] RoundedByHand =
    [
        "IT6 to 3", "IT7 to 3", "IT9 to 3", "IT10 to 3", "IT11 to 3", "IT6 to 6", "IT9 to 6", "IT10 to 6", "IT11 to 6",
        "IT7 to 10", "IT10 to 10", "IT7 to 18", "IT10 to 18", "IT11 to 18", "IT11 to 30", "IT11 to 50", "IT10 to 80", "IT11 to 80", "IT10 to 120", "IT11 to 120",
    ];

    [Fact]
    public void The_table_follows_the_formula_but_where_the_standard_rounded_by_hand()
    {
        var others = new List<string>();
        foreach (var band in SizeBand.All)
            foreach (var (grade, width) in band.Widths.Select((w, i) => (i + 5, w)))
            {
                var formula = Laws.Width(grade, band);
                if (Math.Abs(width - formula) > 0.5) others.Add($"IT{grade} to {band.UpTo}");
                if (band.Over > 0) Assert.InRange(width, formula * 0.96 - 0.5, formula * 1.04 + 0.5);
            }
        Assert.Equal(RoundedByHand.Order(), others.Order());
    }
}

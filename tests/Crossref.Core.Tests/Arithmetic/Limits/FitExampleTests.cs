using System.Globalization;
using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Tests.Arithmetic.Reference;

namespace Crossref.Core.Tests.Arithmetic.Limits;

public class FitExampleTests
{
    public static IEnumerable<object[]> Rows() => ReferenceRow.Read("fits-iso286-examples.csv").Select(r => new object[] { r["id"] });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_worked_example_comes_out_as_printed(string id)
    {
        var row = ReferenceRow.Read("fits-iso286-examples.csv").Single(r => r["id"] == id);
        var (hole, shaft) = (Limits(row, "hole"), Limits(row, "shaft"));
        // F03 is a C hole. The table does not carry C, and nothing here guesses it: the right answer is a refusal in words.
        if (row["hole"] == "C11") Assert.Null(hole);
        else if (row["kind"] == "limits")
        {
            Same(row, "lower_mm", (hole ?? shaft)!.Value.Low);
            Same(row, "upper_mm", (hole ?? shaft)!.Value.High);
        }
        else if (row["kind"] == "upper_dev") Same(row, "max_gap_mm", hole!.Value.High - row.Number("nominal_mm"));
        else
        {
            var gap = Fit.Gap(hole!.Value, shaft!.Value);
            Same(row, "min_gap_mm", gap.Low);
            Same(row, "max_gap_mm", gap.High);
            Assert.Equal(row["kind"] + " fit", Fit.Kind(gap));
        }
    }

    [Theory]
    [InlineData(0, 0.02, "clearance fit", "loose by 0 to 0.02 mm")]
    [InlineData(-0.02, 0, "interference fit", "tight by 0 to 0.02 mm")]
    [InlineData(-0.01, 0.02, "transition fit", "between tight by 0.01 and loose by 0.02 mm")]
    public void The_ends_count_as_the_standard_says(double low, double high, string kind, string words)
    {
        Assert.Equal(kind, Fit.Kind(new Interval(low, high)));
        Assert.Equal(words, Fit.Words(new Interval(low, high), 4));
    }

    private static Interval? Limits(ReferenceRow row, string side) =>
        row[side].Length == 0 ? null : ToleranceClass.Read(row[side])!.Deviations(row.Number("nominal_mm"), out _)?.Limits(row.Number("nominal_mm"));

    private static void Same(ReferenceRow row, string column, double value) =>
        Assert.True(Math.Abs(row.Number(column) - value) < 1e-9, value.ToString(CultureInfo.InvariantCulture) + " against " + column + " of " + row);
}

using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

/// <summary>Every published row, both ways: number to sizes, sizes to number.</summary>
public class BearingReferenceTests
{
    private static readonly string[] Closures = ["", "-Z", "-2Z", "ZZ", "-RS", "-2RS1", " 2RSH", "DDU", "-2RZ"];

    [Fact]
    public void Every_number_gives_the_sizes_of_the_handbooks()
    {
        var wrong = new List<string>();
        foreach (var row in BearingReference.Boundaries)
        {
            var names = row["alt_designation"].Split([" | ", " = "], StringSplitOptions.RemoveEmptyEntries).Prepend(row["designation"]);
            var forms = row["form"] == "open or capped" ? Closures : [""];
            foreach (var text in names.SelectMany(n => forms.Select(f => n + f)))
                if (Read(text) is not { } bearing || ((double)bearing.Bore, (double)bearing.Outside, (double?)bearing.Width) != (Number(row["d_mm"]), Number(row["D_mm"]), Number(row["B_mm"])))
                    wrong.Add($"{text}: {row["sources"]} have {row["d_mm"]} x {row["D_mm"]} x {row["B_mm"]}");
        }
        Assert.Equal(195, BearingReference.Boundaries.Count);
        Assert.Empty(wrong);
    }

    [Fact]
    public void The_sizes_of_every_row_lead_back_to_its_number()
    {
        var wrong = BearingReference.Boundaries.Where(row =>
        {
            var possible = BearingMatch.All(Number(row["d_mm"]), Number(row["D_mm"]), Number(row["B_mm"])).Where(m => m.Possible).Select(m => m.Row).ToList();
            return possible.All(r => r.Designation != row["designation"]) || possible.Any(r => r.Bore != decimal.Parse(row["d_mm"], null));
        });
        Assert.Empty(wrong.Select(r => $"{r["designation"]} by {r["sources"]}"));
    }

    // A piece at either end of its tolerance is still that bearing; a tenth more than the tolerance is not.
    [Fact]
    public void A_piece_at_its_limits_agrees_and_one_beyond_them_does_not()
    {
        foreach (var row in BearingReference.Boundaries)
        {
            var (d, bigD, b) = (Number(row["d_mm"]), Number(row["D_mm"]), Number(row["B_mm"]));
            var (bore, outside, width) = (Lower("delta_dmp", d), bigD > 120 ? -0.018 : Lower("delta_Dmp", bigD), Lower("delta_Bs", d));
            Assert.True(Has(d + bore, bigD + outside, b + width), row["designation"]);
            Assert.False(Has(d + bore - 0.0008, bigD, b), row["designation"]);
            Assert.False(Has(d, bigD + 0.0008, b), row["designation"]);
            Assert.False(Has(d, bigD, b + 0.0008), row["designation"]);

            bool Has(double one, double two, double three) =>
                BearingMatch.All(one, two, three).Any(m => m.Possible && m.Row.Designation == row["designation"]);
        }
    }

    [Fact]
    public void Every_flange_is_that_of_the_catalogue()
    {
        foreach (var row in BearingReference.Flanges)
        {
            var (closures, source) = (row["form"] == "both" ? new[] { "", "ZZ", "-2Z", "-2RS" } : [""], $"{row["designation"]}, {row["origin"]}");
            foreach (var closure in closures)
            {
                var bearing = Read(row["designation"] + closure)!;
                Assert.True(bearing.Flanged, source);
                Assert.True(
                    (Number(row["flange_D_mm"]), Number(row["flange_w_mm"])) == ((double?)bearing.FlangeOutside, (double?)bearing.FlangeWidth), source);
                Assert.True((Number(row["d_mm"]), Number(row["D_mm"]), Number(row["B_mm"])) == ((double)bearing.Bore, (double)bearing.Outside, (double?)bearing.Width), source);
            }
        }
        Assert.Equal(42, BearingReference.Flanges.Count);
    }

    [Fact]
    public void Every_limit_of_class_Normal_is_that_of_the_handbooks()
    {
        foreach (var row in BearingReference.Limits.Where(r => r["symbol"].StartsWith("delta", StringComparison.Ordinal)))
        {
            var (over, including) = (Number(row["over_mm"]), Number(row["incl_mm"]));
            foreach (var size in new[] { over + 0.001, (over + including) / 2, including })
            {
                var found = row["symbol"] switch
                {
                    "delta_dmp" => BearingTolerance.Bore(size),
                    "delta_Dmp" => BearingTolerance.Outside(size),
                    _ => BearingTolerance.Width(size),
                };
                Assert.True(found == new Interval(Number(row["lower_um"]) / 1000, Number(row["upper_um"]) / 1000), $"{row["symbol"]} at {size}, {row["sources"]}");
            }
        }
        // The other rows are runouts (K_ia), which nobody measures on a bench with a calliper: the tool carries none.
        Assert.Equal(6, BearingReference.Limits.Count(r => r["symbol"] == "K_ia max"));
        Assert.Equal(20, BearingReference.Limits.Count(r => r["symbol"].StartsWith("delta", StringComparison.Ordinal)));
        Assert.Null(BearingTolerance.Bore(121));
        Assert.Null(BearingTolerance.Outside(2));
    }

    // A bearing supplier's tolerance page in inches (www.consbrgs.com/technicaldata/383_bt.html), ABEC 1, printed to 0.00005 in.
    [Theory]
    [InlineData(18, 0.0003)]
    [InlineData(30, 0.00035)]
    [InlineData(50, 0.0004)]
    [InlineData(80, 0.0005)]
    [InlineData(120, 0.0006)]
    [InlineData(150, 0.0007)]
    public void The_outside_limits_agree_with_a_table_in_inches(double outside, double inches) =>
        Assert.InRange(-BearingTolerance.Outside(outside)!.Value.Low, (inches - 0.00005) * 25.4, (inches + 0.00005) * 25.4);

    [Fact]
    public void Every_row_of_the_table_has_its_limits() => Assert.All(BearingTable.Rows, r =>
        Assert.True(BearingLimits.Of((double)r.Bore, (double)r.Outside, (double)r.Width) is { Bore: not null, Outside: not null, Width: not null }, r.Designation));

    [Fact]
    public void Every_clearance_is_that_of_the_handbooks()
    {
        foreach (var row in BearingReference.Clearances)
            foreach (var size in new[] { Number(row["over_mm"]) + 0.001, Number(row["incl_mm"]) })
                Assert.True(
                    RadialClearance.Of(size, row["group"])?.Micrometres == new Interval(Number(row["min_um"]), Number(row["max_um"])), $"{row["group"]} at {size}, {row["sources"]}");
        Assert.Null(RadialClearance.Of(5, "C4"));
        Assert.Null(RadialClearance.Of(12, "CM"));
    }

    private static double Lower(string symbol, double size) => Number(BearingReference.Limits.Single(r => r["symbol"] == symbol && Number(r["over_mm"]) < size && Number(r["incl_mm"]) >= size)["lower_um"]) / 1000;

    private static double Number(string text) => BearingReference.Number(text);

    private static BearingDesignation? Read(string text) => BearingDesignation.Read(text);
}

using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Expansion;
using Crossref.Core.Tests.Arithmetic.Reference;

namespace Crossref.Core.Tests.Arithmetic.Expansion;

public class ExpansionExampleTests
{
    public static IEnumerable<object[]> Rows() => ReferenceRow.Read("materials-examples.csv").Select(r => new object[] { r["id"] });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_worked_example_comes_out_as_printed(string id)
    {
        var row = ReferenceRow.Read("materials-examples.csv").Single(r => r["id"] == id);
        var (given, printed) = (row.Given, row.Number("value"));
        // Each as what must come to the printed figure, and how far the print's last digit lets it be away. In micrometres.
        var (value, expected, within) = row["kind"] switch
        {
            // At the printed temperature ring and shaft must just slip. The print has 0.1 K, which is 0.005 µm here.
            "ring_heat" => (Slip(given, given["alpha"] * (printed - given["T0"]), 0), 0, 0.005),
            "ring_cool" => (Slip(given, given["alpha_ring"] * (printed - given["T0"]), given["alpha_shaft"] * (printed - given["T0"])), 0, 0.005),
            // The page prints 191.67 K because it divides by the hole (2.0000). It is the rod (2.0046) that shrinks: 191.2 K.
            "rod_cool" => (1000 * ThermalExpansion.Growth(given["D"], given["alpha"] * printed).Low, 1000 * (given["D"] - given["d"]), 0.005),
            // NSK (9.3) takes the ring 0.12 of the rise warmer than the shaft, at 12.5 millionths.
            "nsk_interference" => (1000 * ThermalExpansion.GapChange(given["d"], 12.5e-6 * 0.12 * given["dT"], given["d"], 0).Low, printed, 0.005),
            "nsk_clearance" => (1000 * ThermalExpansion.Growth((4 * given["D"] + given["d"]) / 5, 12.5e-6 * given["dt"]).Low, printed, 0.05),
            "diff_expansion" => (1000 * ThermalExpansion.GapChange(given["d"], given["a_out"] * given["dT"], given["d"], given["a_in"] * given["dT"]).Low, printed, 0.05),
            _ => (1000 * ThermalExpansion.Growth(given["L"], given["a"] * given["dT"]).Low, printed, 0.05),
        };
        Assert.True(Math.Abs(value - expected) <= within, $"{value} µm, not {expected}: {row}");
    }

    [Fact]
    public void The_191_67_kelvin_of_T03_belong_to_the_hole()
    {
        Assert.Equal(4.6, 1000 * ThermalExpansion.Growth(2, 12e-6 * 191.67).Low, 3);
        Assert.NotEqual(4.6, 1000 * ThermalExpansion.Growth(2.0046, 12e-6 * 191.67).Low, 3);
    }

    private static double Slip(IReadOnlyDictionary<string, double> given, double ring, double shaft)
    {
        Interval hole = given["d_in"], inside = given["d_shaft"];
        return 1000 * (hole - inside + ThermalExpansion.GapChange(hole, ring, inside, shaft)).Low;
    }
}

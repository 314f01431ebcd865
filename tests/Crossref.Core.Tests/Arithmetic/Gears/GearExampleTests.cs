using Crossref.Core.Tests.Arithmetic.Reference;

namespace Crossref.Core.Tests.Arithmetic.Gears;

/// <summary>Every published figure, to its last printed digit.</summary>
public class GearExampleTests
{
    // Figures that their own source printed wrong, why, and how far off they are at most.
    private static readonly Dictionary<string, (string Why, double Most)> Misprinted = new()
    {
        ["G13 y"] = ("0.097447 printed as 0.09744: cut off, not rounded", 1e-5),
        ["G13 da1"] = ("48.1539 printed as 48.153: cut off, not rounded", 1e-3),
        ["G13 df1"] = ("34.6577 printed as 34.657: cut off, not rounded", 1e-3),
        ["G14 mt"] = ("4.12246 printed as 4.1224: cut off, not rounded", 1e-4),
        ["G14 db1"] = ("81.0565 printed as 81.057: the report goes on from a rounded figure", 1e-3),
        ["G14 alphawt"] = ("23.43658 by the centre distance and by the profile shifts alike; 23.43655 is not explained", 4e-5),
    };

    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceRow.Read("gears-examples.csv");

    [Fact]
    public void Every_figure_comes_out_as_printed()
    {
        Assert.Equal(142, Rows.Count);
        var wrong = Rows.Where(r => !Misprinted.ContainsKey(Key(r)) && !IsAsPrinted(r)).Select(r => $"{GearExamples.Work(r):R} instead of {r}");
        Assert.Empty(wrong);
    }

    [Fact]
    public void A_misprint_is_off_by_its_last_digit_and_still_is_one()
    {
        var rows = Rows.Where(r => Misprinted.ContainsKey(Key(r))).ToList();
        Assert.Equal(Misprinted.Count, rows.Count);
        foreach (var row in rows)
        {
            Assert.False(IsAsPrinted(row), $"now as printed: {row}");
            Assert.True(Math.Abs(GearExamples.Work(row) - row.Number("published")) <= Misprinted[Key(row)].Most, $"{GearExamples.Work(row):R} instead of {row}");
        }
    }

    private static string Key(ReferenceRow row) => $"{row["id"]} {row["quantity"]}";

    // Half of the last printed digit (0.79375 may be printed as 0.7937); figures with ten digits were worked out from inputs with as many.
    private static bool IsAsPrinted(ReferenceRow row)
    {
        var printed = row["published"];
        var decimals = printed.Contains('.', StringComparison.Ordinal) ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        var off = Math.Abs(GearExamples.Work(row) - row.Number("published"));
        return off <= 0.5 * Math.Pow(10, -decimals) + 1e-9 || (decimals >= 10 && off <= 2e-9 * row.Number("published"));
    }
}

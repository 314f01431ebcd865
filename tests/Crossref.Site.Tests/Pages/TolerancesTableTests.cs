using Crossref.Core.Records;
using Crossref.Core.Sizes;
using Crossref.Site.Pages.Calculation;

namespace Crossref.Site.Tests.Pages;

public sealed class TolerancesTableTests
{
    [Fact]
    public void The_table_says_what_comparing_parts_allows_at_every_size()
    {
        var table = TolerancesTable.Json();
        Assert.Equal(["bearing", "gear", "lamp", "thermistor", "spring"], table.Select(k => k.Key));
        foreach (var kind in table.Select(k => PartKind.Find(k.Key)!))
        {
            var attributes = table[kind.Name]!.AsObject();
            Assert.Equal(kind.Deciding, attributes.Select(a => a.Key));
            foreach (var (attribute, bands) in attributes)
            {
                Assert.Equal(SizeName.Find(attribute)!.Measures is null, bands is null);
                if (bands is null) continue;
                foreach (var value in Values)
                {
                    var band = bands.AsArray().First(b => value <= (double)b!["upTo"]! + 1e-9)!;
                    var tolerance = WorkingTolerance.Of(kind, attribute, value);
                    var width = band["share"] is { } share ? (double)share * value : (double)band["width"]!;
                    Assert.True(width == tolerance.Width && (string?)band["reason"] == tolerance.Reason, $"{kind} {attribute} {value}: {band.ToJsonString()}, not {tolerance}");
                }
            }
        }
    }

    // Hundredths up to 130, then steps of a percent; on and beside every round size.
    private static IEnumerable<double> Values => Enumerable.Range(1, 13_000).Select(i => i / 100.0)
        .Concat(Enumerable.Range(0, 600).Select(i => 130 * Math.Pow(1.01, i)))
        .Concat(new[] { 0.6, 2.5, 3, 6, 10, 18, 30, 50, 80, 120, 150, 400, 1000, 2000, 4000 }.SelectMany(v => new[] { v - 1e-6, v + 1e-12, v + 1e-6 }));
}

using System.Globalization;
using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Tests.Arithmetic.Reference;
using Xunit.Abstractions;

namespace Crossref.Core.Tests.Arithmetic.Limits;

/// <summary>Every figure of the table above 3 mm is made wrong in turn; a handbook's printed classes and the standard's formulas must notice. The band up to 3 mm was set by hand and is not in the handbook: only the reference table tells there.</summary>
public class PlantedRowsTests(ITestOutputHelper output)
{
    private static readonly IReadOnlyList<(ToleranceClass Class, ReferenceRow Row)> Printed =
        [.. ReferenceRow.Read("fits-iso286-limits.csv").Select(r => (ToleranceClass.Read(r["class"])!, r))];

    [Fact]
    public void The_table_as_it_stands_has_no_fault() => Assert.All(SizeBand.All, b => Assert.False(Caught(b)));

    [Fact]
    public void A_wrong_figure_is_noticed_above_3_mm()
    {
        var (planted, missed) = (0, new List<string>());
        for (var b = 1; b < SizeBand.All.Count; b++)
            foreach (var (what, change) in Places())
                foreach (var wrong in Wrong(b, change.Read))
                {
                    planted++;
                    if (!Caught(change.Write(SizeBand.All[b], wrong))) missed.Add(string.Create(CultureInfo.InvariantCulture, $"{what} to {SizeBand.All[b].UpTo} as {wrong}"));
                }
        output.WriteLine($"{planted - missed.Count} of {planted} wrong figures noticed; missed: {string.Join(", ", missed)}");
        Assert.True(planted > 390, $"only {planted} planted");
        Assert.Equal(Unnoticed.Order(), missed.Order());
    }

    // 392 of 396 are noticed. The handbook's holes begin at 10 mm and delta at grade 5 has no formula without IT4, so below 10 mm
    // only the reference table itself tells these from the right ones.
    private static readonly string[] Unnoticed = ["delta5 to 6 as 0", "delta5 to 6 as 2", "delta5 to 10 as 1", "delta5 to 10 as 3"];

    private static bool Caught(SizeBand band) => Laws.Faults(band).Any() || Printed.Any(p =>
        p.Row.Number("incl_mm") == band.UpTo && p.Class.In(band) != new LimitDeviation(p.Row.Number("lower_um"), p.Row.Number("upper_um")));

    // The neighbours' figures, and a tenth more and less, at least one micrometre.
    private static IEnumerable<double> Wrong(int index, Func<SizeBand, double> read)
    {
        var right = read(SizeBand.All[index]);
        var tenth = Math.Max(1, Math.Round(Math.Abs(right) / 10));
        var neighbours = new[] { index - 1, index + 1 }.Where(i => i < SizeBand.All.Count).Select(i => read(SizeBand.All[i]));
        return neighbours.Concat([right + tenth, right - tenth]).Where(w => w != right).Distinct();
    }

    private static IEnumerable<(string What, (Func<SizeBand, double> Read, Func<SizeBand, double, SizeBand> Write) Change)> Places()
    {
        for (var i = 0; i < 7; i++)
        {
            var at = i;
            yield return ($"IT{i + 5}", (b => b.Widths[at], (b, w) => b with { Widths = [.. b.Widths.Select((x, j) => j == at ? w : x)] }));
        }
        foreach (var letter in SizeBand.All[0].Deviations.Keys)
            yield return (letter, (b => b.Deviations[letter], (b, w) => b with { Deviations = b.Deviations.ToDictionary(d => d.Key, d => d.Key == letter ? w : d.Value) }));
        yield return ("delta5", (b => b.Delta5, (b, w) => b with { Delta5 = w }));
    }
}

using Crossref.Core.Records;

namespace Crossref.Core.Tests.Records;

public class PartialDateTests
{
    [Theory]
    [InlineData("2026-02-11", 2026, 2, 11)]
    [InlineData("2026-02", 2026, 2, 0)]
    [InlineData("2026", 2026, 0, 0)]
    [InlineData("2024-02-29", 2024, 2, 29)]
    [InlineData("unknown", 0, 0, 0)]
    public void As_exactly_as_somebody_knew_it(string text, int year, int month, int day)
    {
        Assert.True(PartialDate.TryParse(text, out var date));
        Assert.Equal(new PartialDate(year, month, day), date);
        Assert.Equal(text, date.ToString());
    }

    [Theory]
    [InlineData("2026-02-30")]
    [InlineData("2025-02-29")]
    [InlineData("2026-13")]
    [InlineData("2026-2-1")]
    [InlineData("11.02.2026")]
    [InlineData("26")]
    [InlineData("1899")]
    [InlineData("2200")]
    [InlineData("")]
    [InlineData("2026-02-11-01")]
    [InlineData("٢٠٢٦")]
    public void Anything_else_is_refused(string text) => Assert.False(PartialDate.TryParse(text, out _));

    [Theory]
    [InlineData("2026-02", "2026-02-01", "2026-02-28")]
    [InlineData("2024", "2024-01-01", "2024-12-31")]
    [InlineData("2026-02-11", "2026-02-11", "2026-02-11")]
    public void A_vague_date_spans_days(string text, string earliest, string latest)
    {
        Assert.True(PartialDate.TryParse(text, out var date));
        Assert.Equal((Day(earliest), Day(latest)), (date.Earliest, date.Latest));
    }

    [Theory]
    [InlineData("2026-01", "2026-02-01", true)]
    [InlineData("2026-02", "2026-02-28", false)]
    [InlineData("2026", "2026-12-31", false)]
    [InlineData("unknown", "2026", false)]
    [InlineData("2026", "unknown", false)]
    public void Surely_before_means_whatever_day_was_meant(string left, string right, bool expected)
    {
        Assert.True(PartialDate.TryParse(left, out var a) & PartialDate.TryParse(right, out var b));
        Assert.Equal(expected, a.SurelyBefore(b));
    }

    private static DateOnly? Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}

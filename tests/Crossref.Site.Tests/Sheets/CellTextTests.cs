using System.Text;
using Crossref.Site.Sheets;

namespace Crossref.Site.Tests.Sheets;

/// <summary>What is put into a cell comes back, and never as a formula.</summary>
public class CellTextTests
{
    private static readonly string[] Pieces =
        ["'", "''", "=", "+", "-", "@", "\t", "\n", "\r", "\"", ",", ";", "|", "\\", " ", "0", "007", "1E5", "2-1", "a", "OS-1203", "true", "1/2", "Mar", "#REF!", "\uFF1D", "ü", "€"];

    [Theory]
    [InlineData("007", "'007")]
    [InlineData("1E5", "'1E5")]
    [InlineData("2-1", "'2-1")]
    [InlineData("2026-02-11", "'2026-02-11")]
    [InlineData("123456789012345678", "'123456789012345678")]
    [InlineData("MAR-1", "'MAR-1")]
    [InlineData("true", "'true")]
    [InlineData("12:30", "'12:30")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("\"=1+1", "'\"=1+1")]
    [InlineData("'=1+1", "''=1+1")]
    [InlineData("'007", "''007")]
    [InlineData("x;=1+1", "x;'=1+1")]
    [InlineData("OS-1203-02", "OS-1203-02")]
    [InlineData("6001-2RS", "6001-2RS")]
    [InlineData("'s Wharf", "'s Wharf")]
    [InlineData("Marker", "Marker")]
    [InlineData("M. Orr", "M. Orr")]
    public void A_text_is_marked_only_where_a_spreadsheet_would_change_or_run_it(string text, string cell)
    {
        Assert.Equal(cell, CellText.Write(text));
        Assert.Equal(text, CellText.Read(cell));
    }

    [Fact]
    public void Any_text_comes_back_and_is_no_formula_whatever_divides_the_cells()
    {
        var random = new Random(5);
        var (marked, plain) = (0, 0);
        for (var i = 0; i < 100_000; i++)
        {
            var text = new StringBuilder();
            for (var n = random.Next(0, 6); n > 0; n--) text.Append(Pieces[random.Next(Pieces.Length)]);
            var cell = CellText.Write(text.ToString());
            Assert.Equal(text.ToString(), CellText.Read(cell));
            Assert.All(cell.Split(',', ';', '\t', '\n', '\r'), piece => Assert.DoesNotMatch("^[\\s\"]*[=+@\uFF1D-]", piece));
            if (cell == text.ToString()) plain++;
            else marked++;
        }
        Assert.InRange(marked, 10_000, 90_000);
        Assert.InRange(plain, 10_000, 90_000);
    }

    [Fact]
    public void Lists_come_back_whatever_their_values_hold()
    {
        var random = new Random(6);
        for (var i = 0; i < 20_000; i++)
        {
            var values = Enumerable.Range(0, random.Next(1, 4))
                .Select(_ => string.Concat(Enumerable.Range(0, random.Next(1, 5)).Select(_ => Pieces[random.Next(Pieces.Length)])).Replace('\n', 'n').Trim())
                .Where(v => v.Length > 0).ToList();
            Assert.Equal(values, ListCell.Read(ListCell.Write(values)));
            Assert.Equal(values, ListCell.Read(ListCell.Write(values, ListCell.Within), ListCell.Within));
        }
    }
}

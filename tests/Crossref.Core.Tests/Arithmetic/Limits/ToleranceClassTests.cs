using Crossref.Core.Arithmetic.Limits;
using Crossref.Core.Tests.Arithmetic.Reference;

namespace Crossref.Core.Tests.Arithmetic.Limits;

public class ToleranceClassTests
{
    [Fact]
    public void Every_published_fundamental_deviation_comes_out_at_every_grade_it_is_for()
    {
        var compared = 0;
        foreach (var row in ReferenceRow.Read("fits-iso286.csv").Where(r => r["kind"] is "shaft_fd" or "hole_fd" or "js_JS"))
        {
            var (first, last) = row["grade_from"].Length > 0 ? ((int)row.Number("grade_from"), (int)row.Number("grade_to")) : (5, 11);
            for (var grade = Math.Max(first, 5); grade <= Math.Min(last, 11); grade++)
                foreach (var letters in row["symbol"].Split('/'))
                {
                    var deviation = new ToleranceClass(letters, grade).Deviations(row.Number("incl_mm"), out var problem);
                    Assert.True(deviation is not null, $"{letters}{grade} {problem}: {row}");
                    var value = row["limit"] is "es" or "ES" or "+/-" ? deviation.Value.Upper : deviation.Value.Lower;
                    Assert.True(Math.Abs(value - row.Number("value_um")) < 1e-9, $"{letters}{grade} gives {value}: {row}");
                    Assert.Equal(StandardTolerance.Width(grade, row.Number("incl_mm"))!.Value * 1000, deviation.Value.Upper - deviation.Value.Lower, 9);
                    compared++;
                }
        }
        Assert.True(compared > 900, $"only {compared} compared");
    }

    [Fact]
    public void Every_class_that_a_makers_handbook_prints_comes_out()
    {
        var rows = ReferenceRow.Read("fits-iso286-limits.csv");
        Assert.Equal(185, rows.Count);
        foreach (var row in rows)
        {
            var deviation = ToleranceClass.Read(row["class"])!.Deviations(row.Number("over_mm") + 0.5, out _)!.Value;
            Assert.True(deviation == new LimitDeviation(row.Number("lower_um"), row.Number("upper_um")), $"{deviation}: {row}");
        }
    }

    // The rule that raises K, M, N and P at fine grades: the reference gives delta itself, so it is held against two classes that differ by it.
    [Fact]
    public void The_delta_rule_adds_what_the_reference_says()
    {
        foreach (var row in ReferenceRow.Read("fits-iso286.csv").Where(r => r["kind"] == "delta"))
        {
            var grade = (int)row.Number("grade_from");
            var size = row.Number("incl_mm");
            var hole = new ToleranceClass("N", grade).Deviations(size, out _)!.Value.Upper;
            var shaft = new ToleranceClass("n", grade).Deviations(size, out _)!.Value.Lower;
            Assert.True(hole + shaft == row.Number("value_um"), $"N{grade} {hole}, n{grade} {shaft}: {row}");
        }
    }

    // From memory of printed tables; M follows by the rule alone, so these say no more than that the rule is applied to it.
    [Theory]
    [InlineData("M7", 25, 0)]
    [InlineData("M6", 25, -4)]
    [InlineData("M8", 40, 5)]
    [InlineData("M7", 2, -2)]
    public void M_follows_by_the_delta_rule(string text, double size, double upper) => Assert.Equal(upper, ToleranceClass.Read(text)!.Deviations(size, out _)!.Value.Upper);

    [Theory]
    [InlineData("C11", 40, "does not carry C11")]
    [InlineData("K9", 40, "does not carry K9")]
    [InlineData("M9", 40, "does not carry M9")]
    [InlineData("r6", 40, "does not carry r6")]
    [InlineData("cd6", 40, "does not carry cd6")]
    [InlineData("H4", 40, "grades 5 to 11")]
    [InlineData("h12", 40, "grades 5 to 11")]
    [InlineData("H7", 121, "sizes to 120 mm")]
    public void What_the_table_does_not_carry_is_refused_in_words(string text, double size, string words)
    {
        Assert.Null(ToleranceClass.Read(text)!.Deviations(size, out var problem));
        Assert.Contains(words, problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("H")]
    [InlineData("7")]
    [InlineData("Hg7")]
    [InlineData("H 7")]
    [InlineData("H7/g6")]
    [InlineData("")]
    public void What_is_no_class_is_not_read_as_one(string text) => Assert.Null(ToleranceClass.Read(text));
}

using System.Globalization;
using System.Text;
using Crossref.Core.Checking;

namespace Crossref.Core.Tests.Checking;

public class HiddenCharactersTests
{
    private static readonly IEnumerable<Rune> Runes =
        Enumerable.Range(0, 0x110000).Where(v => v is < 0xD800 or > 0xDFFF).Select(v => new Rune(v));

    // Marks of format that draw something: Arabic and Syriac number signs, Kaithi and Egyptian signs.
    private static bool Draws(Rune rune) => rune.Value is (>= 0x0600 and <= 0x0605) or 0x06DD or 0x070F or 0x0890 or 0x0891 or 0x08E2
        or 0x110BD or 0x110CD or (>= 0x13430 and <= 0x1343F);

    [Fact]
    public void Every_control_and_every_mark_of_format_that_draws_nothing_is_found_in_a_number()
    {
        var hidden = Runes.Where(r => Rune.GetUnicodeCategory(r) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
            .Where(r => r.Value is not ('\t' or '\n') && !Draws(r)).ToList();
        Assert.True(hidden.Count > 200);
        Assert.All(hidden, r => Assert.Equal(3, HiddenCharacters.IndexIn($"OS-{r}1203")));
    }

    [Fact]
    public void What_can_be_seen_is_not_found()
    {
        var seen = Runes.Where(r => Rune.IsLetterOrDigit(r) || Rune.IsPunctuation(r) || Rune.IsSymbol(r)).ToList();
        Assert.True(seen.Count > 100_000);
        // The fillers of Hangul count as letters, the empty cell of Braille as a sign.
        Assert.Equal(["U+115F", "U+1160", "U+2800", "U+3164", "U+FFA0"],
            seen.Where(r => HiddenCharacters.IndexIn(r.ToString()) >= 0).Select(r => string.Create(CultureInfo.InvariantCulture, $"U+{r.Value:X4}")));
    }

    [Theory]
    [InlineData("چرخ\u200Cدنده", -1)]
    [InlineData("क्\u200Dष", -1)]
    [InlineData("⚠\uFE0F heat", -1)]
    [InlineData("👩\u200D🔧 ❤\uFE0F\u200D🔥", -1)]
    [InlineData("OS\u200C1", 2)]
    [InlineData("Ö\u200D1", 1)]
    [InlineData("1\uFE0F", 1)]
    [InlineData("\u200D", 0)]
    [InlineData("👩\u200B", 2)]
    public void A_joiner_stands_where_a_script_or_a_sign_needs_it(string text, int at) => Assert.Equal(at, HiddenCharacters.IndexIn(text));

    [Theory]
    [InlineData("a\u0007", "a control character (U+0007)")]
    [InlineData("a\u0085", "a control character (U+0085)")]
    [InlineData("a\u202E", "a character that turns the direction of writing (U+202E)")]
    [InlineData("a\u200B", "a character that nobody sees (U+200B)")]
    [InlineData("a\U000E0041", "a character that nobody sees (U+E0041)")]
    public void It_is_named(string text, string name)
    {
        var at = HiddenCharacters.IndexIn(text);
        Assert.Equal(name, HiddenCharacters.Name(text, at));
        Assert.Equal(name.Contains("control", StringComparison.Ordinal), HiddenCharacters.IsControlAt(text, at));
    }

    // Not as arguments of a test: attributes cannot carry half a character.
    [Fact]
    public void Half_a_character_counts_as_a_control_character()
    {
        Assert.Equal("half a character (U+D800)", HiddenCharacters.Name("a\uD800", HiddenCharacters.IndexIn("a\uD800")));
        Assert.Equal("half a character (U+DC00)", HiddenCharacters.Name("a\uDC00b", HiddenCharacters.IndexIn("a\uDC00b")));
        Assert.True(HiddenCharacters.IsControlAt("a\uDC00b", 1));
        Assert.Equal("?x??y", HiddenCharacters.Masked("\uD800x\U000E0041y"));
    }

    [Theory]
    [InlineData("plain\tand 17 mm", "plain\tand 17 mm")]
    [InlineData("\u001b[31mred\u202E", "?[31mred?")]
    [InlineData("x\U000E0041y", "x??y")]
    public void It_is_masked(string text, string masked) => Assert.Equal(masked, HiddenCharacters.Masked(text));

    [Fact]
    public void A_diagnostic_never_carries_one()
    {
        var code = new DiagnosticCode("CR0000", Severity.Error, "", "");
        var diagnostic = code.At(default, "a\u001b\u202E\nb", new string('x', 599) + "😀 and more");
        Assert.Equal("a???b", diagnostic.Message);
        Assert.Equal(-1, HiddenCharacters.IndexIn(diagnostic.Hint));
    }
}

using System.Text.RegularExpressions;
using Crossref.Core.Checking.Codes;

namespace Crossref.Site.Tests.Reading;

public partial class DiagnosticTests
{
    // Writes what comes out as what is expected, for a developer who changed a message; read the difference.
    private static readonly bool Accept = Environment.GetEnvironmentVariable("ACCEPT_DIAGNOSTICS") == "1";

    public static TheoryData<string, Encodings> Runs
    {
        get
        {
            var data = new TheoryData<string, Encodings>();
            foreach (var name in Fixture.Names)
            {
                foreach (var encoding in Enum.GetValues<Encodings>()) data.Add(name, encoding);
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void Every_mistake_is_reported_as_expected_in_whatever_encoding(string name, Encodings encoding)
    {
        var fixture = new Fixture(name);
        var found = fixture.Run(encoding);
        if (Accept && encoding == Encodings.Plain) File.WriteAllText(fixture.ExpectedFile, found);
        Assert.Equal(fixture.Expected, found);
    }

    [Theory]
    [InlineData(Encodings.Plain)]
    [InlineData(Encodings.CarriageReturns)]
    [InlineData(Encodings.ByteOrderMark)]
    public void The_sound_library_has_no_mistake(Encodings encoding)
    {
        using var folder = new TemporaryFolder();
        folder.Lay(Fixture.Sound, (path, bytes) => path.StartsWith("pictures", StringComparison.Ordinal) ? bytes : Fixture.Encode(bytes, encoding));
        Assert.Equal("", Fixture.Diagnostics(folder.Path));
    }

    [Fact]
    public void Every_code_has_a_fixture_and_no_fixture_has_another_code()
    {
        Assert.Equal(DiagnosticCodes.All.Select(c => c.Code), Fixture.Names.Select(n => new Fixture(n).Code).Distinct());
    }

    [Fact]
    public void A_fixture_shows_its_own_code_and_no_other_since_one_mistake_is_one_diagnostic()
    {
        foreach (var fixture in Fixture.Names.Select(n => new Fixture(n)))
        {
            Assert.Equal([fixture.Code], Code().Matches(fixture.Expected).Select(m => m.Groups["code"].Value).Distinct());
        }
    }

    [Fact]
    public void What_is_printed_names_the_severity_of_the_code()
    {
        foreach (var code in DiagnosticCodes.All)
        {
            var word = Core.Records.Words.Of(code.Severity);
            var expected = Fixture.Names.Select(n => new Fixture(n)).Where(f => f.Code == code.Code).Select(f => f.Expected);
            Assert.All(expected, e => Assert.Contains($"{word} {code.Code}: ", e, StringComparison.Ordinal));
        }
    }

    [GeneratedRegex(": (error|warning) (?<code>CR[0-9]{4}): ", RegexOptions.ExplicitCapture)]
    private static partial Regex Code();
}

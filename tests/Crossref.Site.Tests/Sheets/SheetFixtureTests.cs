using System.Text.RegularExpressions;
using Crossref.Core.Checking;
using Crossref.Site.Sheets;

namespace Crossref.Site.Tests.Sheets;

/// <summary>Each problem has its bad sheet beside what is said of it; the sheets are laid against one small library.</summary>
public partial class SheetFixtureTests
{
    // Writes what comes out as what is expected, for a developer who changed a message; read the difference.
    private static readonly bool Accept = Environment.GetEnvironmentVariable("ACCEPT_DIAGNOSTICS") == "1";

    private static string Folder { get; } = Path.Combine(Repository.SiteTests, "Sheets", "Bad");

    private static IEnumerable<string> All => Directory.EnumerateDirectories(Folder).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. All];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_problem_is_reported_as_expected_and_nothing_would_be_written(string name)
    {
        using var library = new SheetLibrary();
        library.Lay(Path.Combine(Repository.SiteTests, "Sheets", "library"));
        var plan = library.Plan(File.ReadAllBytes(Path.Combine(Folder, name, "sheet.csv")));
        var (expected, found) = (Path.Combine(Folder, name, "expected.txt"), DiagnosticText.Format(plan.Diagnostics));
        if (Accept) File.WriteAllText(expected, found);
        Assert.Equal(File.ReadAllText(expected), found);
        Assert.Equal([name.Split('-')[0]], Code().Matches(found).Select(m => m.Groups["code"].Value).Distinct());
        Assert.Empty(plan.Changes);
    }

    [Fact]
    public void Every_code_of_sheets_has_its_bad_sheet() =>
        Assert.Subset(All.Select(n => n.Split('-')[0]).ToHashSet(), SheetCodes.All.Select(c => c.Code).ToHashSet());

    [GeneratedRegex(": (error|warning) (?<code>CR[0-9]{4}): ", RegexOptions.ExplicitCapture)]
    private static partial Regex Code();
}

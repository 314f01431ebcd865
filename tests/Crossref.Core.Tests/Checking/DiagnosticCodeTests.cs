using System.Reflection;
using System.Text.RegularExpressions;
using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Core.Records;

namespace Crossref.Core.Tests.Checking;

public partial class DiagnosticCodeTests
{
    [Fact]
    public void Codes_are_well_formed_unique_and_in_order()
    {
        var codes = DiagnosticCodes.All.Select(c => c.Code).ToList();
        Assert.All(codes, c => Assert.Matches(Form(), c));
        Assert.Equal(codes.Distinct().Order(StringComparer.Ordinal), codes);
    }

    [Fact]
    public void Every_code_says_what_and_why()
    {
        Assert.All(DiagnosticCodes.All, c => Assert.False(string.IsNullOrWhiteSpace(c.Title)));
        Assert.All(DiagnosticCodes.All, c => Assert.EndsWith(".", c.Why, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_code_that_is_declared_is_in_the_list()
    {
        var declared = new[] { typeof(FileCodes), typeof(YamlCodes), typeof(ShapeCodes), typeof(NoteCodes), typeof(InboxCodes) }
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
            .Where(p => p.PropertyType == typeof(DiagnosticCode)).Select(p => (DiagnosticCode)p.GetValue(null)!);
        Assert.All(declared, c => Assert.Contains(c, DiagnosticCodes.All));
    }

    [Fact]
    public void Every_rule_in_the_folder_is_run()
    {
        var rules = typeof(IRule).Assembly.GetTypes().Where(t => t.IsClass && t.IsAssignableTo(typeof(IRule)));
        Assert.Equal(rules.Select(r => r.Name).Order(StringComparer.Ordinal), Checks.Rules.Select(r => r.GetType().Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_diagnostic_is_two_lines_of_text()
    {
        var diagnostic = new Diagnostic("CR0403", Severity.Error, new Place("shop/a.yaml", 3, 7), "there is no part 'x'", "did you mean 'y'?");
        Assert.Equal("shop/a.yaml:3:7: error CR0403: there is no part 'x'\n    did you mean 'y'?", DiagnosticText.Format(diagnostic));
        Assert.StartsWith("a.png: warning ", DiagnosticText.Format(diagnostic with { Severity = Severity.Warning, Place = new Place("a.png", 0, 0) }), StringComparison.Ordinal);
    }

    [GeneratedRegex("^CR[0-9]{4}$")]
    private static partial Regex Form();
}

using System.Text.Json;
using System.Text.RegularExpressions;
using Crossref.Core.Records;
using Crossref.Site.Sheets;

namespace Crossref.Site.Tests.Sheets;

/// <summary>What is exported and read into an empty library says the same there.</summary>
public partial class RoundTripTests
{
    private const string Empty = "library: ferry-lane\ntitle: Ferry Lane\n---\nsource: f2-parts-list\ntype: parts-list\ntitle: Parts list\n";

    [Fact]
    public void Random_parts_and_bags_come_back_as_they_were()
    {
        for (var seed = 1; seed <= 60; seed++)
        {
            var library = new RandomParts(seed).Library();
            using var other = new SheetLibrary();
            other.Write("library.yaml", Empty);
            var sheets = SheetExport.Files(library);
            foreach (var sheet in sheets.Take(2).Where(s => s.AsText().Count(c => c == '\n') > 1))
            {
                other.Apply(other.Plan(sheet.Content.ToArray()));
                var again = other.Plan(sheet.Content.ToArray());
                Assert.Equal("", Core.Checking.DiagnosticText.Format(again.Diagnostics.Where(d => d.Severity == Core.Checking.Severity.Error)));
                Assert.Empty(again.New);
            }
            var back = other.Sound();
            Assert.Equal(Said(library.Parts.Values), Said(back.Parts.Values));
            Assert.Equal(Said(library.Bags.Values), Said(back.Bags.Values));
            Assert.All(SheetExport.Files(back).Take(2).Zip(sheets), pair => Assert.Equal(pair.Second.AsText(), pair.First.AsText()));
        }
    }

    [Fact]
    public void Sheets_open_cleanly()
    {
        foreach (var sheet in SheetExport.Files(new RandomParts(3).Library()))
        {
            Assert.Equal([0xEF, 0xBB, 0xBF], sheet.Content.Span[..3].ToArray());
            var text = sheet.AsText();
            Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
            Assert.DoesNotMatch("[^\r]\n", text);
        }
    }

    // Everything but the places, which are other files' now.
    private static IEnumerable<string> Said(IEnumerable<IRecord> records) =>
        records.OrderBy(r => r.Id, StringComparer.Ordinal).Select(r => Place().Replace(JsonSerializer.Serialize(r, r.GetType()), ""));

    [GeneratedRegex("\"Place\":\\{[^}]*\\},?", RegexOptions.CultureInvariant)]
    private static partial Regex Place();
}

using Crossref.Core.Checking;
using Crossref.Site.Tests.Planting;
using Xunit.Abstractions;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>One mistake of every kind at every key of every record, one at a time: it is reported, and nothing else is.</summary>
public class MistakeTests(ITestOutputHelper output)
{
    private readonly Bed _bed = Bed.Of(Path.Combine(Repository.SiteTests, "Full"));

    [Fact]
    public void Without_a_mistake_nothing_is_reported() => Assert.Equal("", DiagnosticText.Format(_bed.Check()));

    [Fact]
    public void Mistakes_with_keys() => Check(_bed.Documents.SelectMany(Walker.Maps).SelectMany(m => KeyPlants.In(_bed, m)));

    [Fact]
    public void Mistakes_with_values() => Check(_bed.Documents.SelectMany(Walker.Values).SelectMany(v => ValuePlants.In(_bed, v)));

    // How a value is written does not depend on the rest of the record: once for each key is enough.
    [Fact]
    public void Mistakes_with_yaml() => Check(_bed.Documents.SelectMany(Walker.Values).DistinctBy(v => (v.Owner, v.Name, v.Shape)).SelectMany(ValuePlants.Yaml)
        .Concat(_bed.Documents.SelectMany(Walker.Maps).DistinctBy(m => m.Shape).SelectMany(KeyPlants.Yaml)));

    [Fact]
    public void Mistakes_with_records() => Check([.. RecordPlants.All(_bed), .. RecordPlants.Copies(_bed), .. NotePlants.All(_bed), .. FilePlants.All(_bed)]);

    private void Check(IEnumerable<Plant> plants)
    {
        var wrong = new List<string>();
        var codes = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var plant in plants.ToList())
        {
            var undo = plant.Make();
            var found = _bed.Check();
            var expected = plant.Expected().ToList();
            undo();
            foreach (var report in expected) codes[report.Code] = codes.GetValueOrDefault(report.Code) + 1;
            if (!expected.SequenceEqual(found.Select(Report.Of)))
                wrong.Add($"{plant}\n    expected {string.Join(", ", expected)}\n{DiagnosticText.Format(found)}");
        }
        output.WriteLine(string.Join("\n", codes.Select(c => $"{c.Key} {c.Value}")) + $"\n{codes.Values.Sum()} mistakes, {wrong.Count} of them reported otherwise");
        File.WriteAllText("/tmp/wrong.txt", string.Join("\n", wrong));
        Assert.True(wrong.Count == 0, string.Join("\n", wrong.Take(20)));
    }
}

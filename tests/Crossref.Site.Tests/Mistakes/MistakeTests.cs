using Crossref.Core.Checking;
using Crossref.Core.Checking.Codes;
using Crossref.Site.Reading.Shapes;
using Crossref.Site.Tests.Planting;
using Xunit.Abstractions;

namespace Crossref.Site.Tests.Mistakes;

/// <summary>
/// One mistake of every kind at every key of every record, one at a time in a sound library: it is reported with its
/// code in its line, once, and nothing else is. What is planted follows from the shapes, so that a new key has its
/// mistakes as soon as the full example writes it.
/// </summary>
public class MistakeTests(ITestOutputHelper output)
{
    // Of files and pictures as such, not of what is written, of the inbox, and of copies; each has its folder below Diagnostics.
    private static readonly string[] NotPlanted =
        [FileCodes.LinkOut.Code, FileCodes.Unreadable.Code, NoteCodes.PictureLarge.Code, .. InboxCodes.All.Concat(SharingCodes.All).Select(c => c.Code)];

    private readonly Bed _bed = Bed.Full();

    [Fact]
    public void Without_a_mistake_nothing_is_reported() => Assert.Equal("", DiagnosticText.Format(_bed.Check()));

    [Fact]
    public void Every_mistake_is_reported_once_and_nothing_else_is()
    {
        var wrong = new List<string>();
        var codes = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var plant in Plants().ToList())
        {
            var undo = plant.Make();
            var found = _bed.Check();
            var expected = plant.Expected();
            undo();
            codes[expected.Code] = codes.GetValueOrDefault(expected.Code) + 1;
            if (found is not [var only] || Report.Of(only) != expected) wrong.Add($"{plant}\n    expected {expected}\n{DiagnosticText.Format(found)}");
        }
        output.WriteLine(string.Join("\n", codes.Select(c => $"{c.Key} {c.Value}")) + $"\n{codes.Values.Sum()} mistakes");
        Assert.True(wrong.Count == 0, $"{wrong.Count} are reported otherwise:\n" + string.Join("\n", wrong.Take(20)));
        Assert.Equal(DiagnosticCodes.All.Select(c => c.Code).Except(NotPlanted), codes.Keys);
        Assert.Equal("", DiagnosticText.Format(_bed.Check()));
    }

    [Fact]
    public void Mistakes_are_planted_at_every_key()
    {
        var planted = _bed.Documents.SelectMany(Walker.Maps).SelectMany(m => m.Map.Keys!.Select(e => (m.Shape, e.Key))).ToHashSet();
        var all = _bed.Documents.Select(d => d.Shape).Distinct().SelectMany(Walker.Shapes).SelectMany(s => s.Keys.Select(k => (Shape: s, Key: k.Name)));
        // Of the three counts one is written at a time.
        var missing = all.Where(k => !planted.Contains(k) && !SharedShapes.CountKeys.Contains(k.Key));
        Assert.Equal("", string.Join(", ", missing.Select(m => $"{m.Shape.Name}/{m.Key}")));
    }

    // How YAML is written does not depend on the rest of the record: once for each key is enough.
    private IEnumerable<Plant> Plants()
    {
        var (maps, values) = (_bed.Documents.SelectMany(Walker.Maps).ToList(), _bed.Documents.SelectMany(Walker.Values).ToList());
        return
        [
            .. maps.SelectMany(m => KeyPlants.In(_bed, m)), .. maps.DistinctBy(m => m.Shape).SelectMany(KeyPlants.Yaml),
            .. values.SelectMany(v => ValuePlants.In(_bed, v)), .. values.DistinctBy(v => (v.Owner, v.Name, v.Shape)).SelectMany(ValuePlants.Yaml),
            .. RecordPlants.All(_bed), .. RecordPlants.Copies(_bed), .. NotePlants.All(_bed), .. FilePlants.All(_bed),
        ];
    }
}

using Crossref.Core.Records;
using Crossref.Site.Reading;
using Crossref.Site.Recording;
using Crossref.Site.Tests.Hostile;

namespace Crossref.Site.Tests.Recording;

/// <summary>Records formed from fields, tried in the small sound library.</summary>
public sealed class RecordingDeskTests : IDisposable
{
    private static readonly DateOnly Today = new(2026, 6, 1);
    private static readonly Dictionary<string, string> Seated = new()
    {
        ["part"] = "brg-2", ["at"] = "ostrin-f2/head/gear", ["verdict"] = "fits", ["basis"] = "seated", ["source"] = "log",
    };

    private readonly TemporaryFolder _folder = new();

    public RecordingDeskTests() => _folder.Lay(Reading.Fixture.Sound, (_, bytes) => bytes);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_examples_give_the_text_that_stands_beside_them()
    {
        Assert.True(RecordingCase.All.Count >= 6);
        var wrong = new List<string>();
        foreach (var example in RecordingCase.All)
        {
            using var folder = new TemporaryFolder();
            folder.Write("library.yaml", $"library: {example.Library}\ntitle: T\n");
            var text = new RecordingDesk(folder.Path, ContentReader.Read(folder.Path), example.Date).Claim(example.Fields).Text;
            if (example.Text != text) wrong.Add($"{example.Name}\n----\n{text}");
        }
        Assert.True(wrong.Count == 0, string.Join("====\n", wrong));
    }

    [Fact]
    public void Every_field_reaches_the_record()
    {
        var fields = new Dictionary<string, string>
        {
            ["part"] = "brg-2", ["replaces"] = "brg-1", ["where"] = "ostrin-f2", ["both-ways"] = "true", ["verdict"] = "fits-with-change", ["basis"] = "ran",
            ["sheets"] = "18000", ["only-models"] = "F2, F2S", ["only-serial-from"] = "007", ["only-serial-to"] = "2999", ["only-mains"] = "230 V",
            ["change"] = "collar: 0.3 mm off", ["orientation"] = "flange: inboard, mark: up", ["machine"] = "folder-1", ["neighbours"] = "undamaged",
            ["source"] = "log", ["locator"] = "p. 3", ["by"] = "M. Orr", ["note"] = " two\nlines ",
        };
        // The three that exclude one of these are tried by themselves.
        Assert.Equal(ClaimForm.Fields.Select(f => f.Name).Except(["at", "cycles", "hours", "withdraws"]), fields.Keys);
        var claim = Tried(fields);
        Assert.Equal(("brg-2", "brg-1", "ostrin-f2", true), (claim.Part.Id, claim.Replaces?.Id, claim.Where?.Id, claim.BothWays));
        Assert.Equal((Verdict.FitsWithChange, Basis.Ran, new Count(18000, CountUnit.Sheets)), (claim.Verdict, claim.Basis, claim.Run));
        Assert.Equal(["F2", "F2S"], claim.OnlyIf.Models);
        Assert.Equal(("007", "2999", 230m), (claim.OnlyIf.SerialFrom, claim.OnlyIf.SerialTo, claim.OnlyIf.Mains));
        Assert.Equal(("collar: 0.3 mm off", "inboard", "up"), (claim.Change, claim.Orientation["flange"], claim.Orientation["mark"]));
        Assert.Equal(("folder-1", false, "log", "p. 3", "M. Orr", "two lines"), (claim.Machine?.Id, claim.NeighboursDamaged, claim.Source?.Id, claim.Locator, claim.By, claim.Note));
        Assert.Equal("2026-06-01", claim.Date.ToString());
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void A_hostile_text_in_any_field_comes_back_as_it_was(string text)
    {
        var claim = Tried(new Dictionary<string, string>(Seated) { ["locator"] = text, ["by"] = text, ["note"] = text, ["change"] = text });
        Assert.All([claim.Locator, claim.By, claim.Note, claim.Change], t => Assert.Equal(text, t));
    }

    public static TheoryData<string> Hostile => [.. HostileText.Shown];

    [Fact]
    public void The_same_finding_twice_is_one_record_and_an_id_that_is_taken_gives_way()
    {
        var first = Write(Seated);
        Assert.False(first.IsKnown);
        var again = Write(Seated);
        Assert.Equal((first.Id, first.File, true), (again.Id, again.File, again.IsKnown));
        // Somebody changed what the file says: the finding is no longer on record, and its id is taken.
        _folder.Write(first.File, first.Text.Replace("seated", "told", StringComparison.Ordinal));
        var other = Write(Seated);
        Assert.NotEqual(first.Id, other.Id);
        Assert.False(other.IsKnown);
    }

    [Fact]
    public void A_file_that_stands_in_the_way_is_left_alone()
    {
        var name = new RecordingDesk(_folder.Path, ContentReader.Read(_folder.Path), Today).Claim(Seated).File;
        _folder.Write(name.ToUpperInvariant().Replace("CLAIMS/", "claims/", StringComparison.Ordinal), "# a remark\n");
        Assert.Equal(name.Replace(".yaml", "-2.yaml", StringComparison.Ordinal), new RecordingDesk(_folder.Path, ContentReader.Read(_folder.Path), Today).Claim(Seated).File);
    }

    private NewRecord Write(Dictionary<string, string> fields)
    {
        var record = new RecordingDesk(_folder.Path, ContentReader.Read(_folder.Path), Today).Claim(fields);
        if (!record.IsKnown) _folder.Write(record.File, record.Text);
        return record;
    }

    private Claim Tried(IReadOnlyDictionary<string, string> fields)
    {
        var desk = new RecordingDesk(_folder.Path, ContentReader.Read(_folder.Path), Today);
        var record = desk.Claim(fields);
        var proposal = desk.Try([record]);
        Assert.False(proposal.IsRefused, record.Text + string.Join("\n", proposal.Caused));
        return proposal.After.Claims[record.Id];
    }
}

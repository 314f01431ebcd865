namespace Crossref.Cli.Tests;

/// <summary>Marks that repeat, searched in the records: the demo's, wrong ones, none.</summary>
public sealed class RepeatCommandTests : IDisposable
{
    private const string NotSearched = "The records were not searched";
    private readonly string _folder = Directory.CreateTempSubdirectory("repeat").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // As the demo's note on marks every 94 mm has it: the drum and the pressure roller of the T40, nothing else in it.
    [Theory]
    [InlineData("press-1")]
    [InlineData("tarrock-t40")]
    public void A_machine_or_its_family_names_the_places_that_turn_so(string machine)
    {
        var run = Tool.OnDemo("repeat", "94", "--machine", machine, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        var lines = run.Json["lines"]!.AsArray().Select(l => (What: (string)l!["what"]!, Figure: (string)l["figure"]!, How: (string)l["how"]!)).ToList();
        Assert.Equal(
            [
                ("Pressure roller, Tarrock T40 toner presses", "94.2 mm, 0.3% more", "suspect: tarrock-t40/fixing/pressure-roller; 30 mm across, on record"),
                ("Drum, Tarrock T40 toner presses", "94.2 mm, 0.3% more", "suspect: tarrock-t40/imaging/drum; 30 mm across, on record"),
            ],
            lines.Where(l => l.How.StartsWith("suspect", StringComparison.Ordinal)));
        Assert.All(lines.Where(l => l.How.StartsWith("near miss", StringComparison.Ordinal)), l => Assert.Contains("tarrock-t40/", l.How, StringComparison.Ordinal));
        Assert.Contains(lines, l => l.How.StartsWith("near miss", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_machine_the_folder_is_searched_too() =>
        Assert.Contains("suspect: ostrin-f2/fold-head/roller-3; 30 mm across", Tool.OnDemo("repeat", "94").Output, StringComparison.Ordinal);

    [Fact]
    public void A_belt_is_found_by_the_loop_of_its_part() =>
        Assert.Contains("suspect: ostrin-f2/feed/suction-belt; 312 mm around, by blt-os-0820", Tool.OnDemo("repeat", "312", "--machine", "folder-1").Output, StringComparison.Ordinal);

    [Fact]
    public void A_mistyped_machine_is_refused_with_the_nearest()
    {
        var run = Tool.OnDemo("repeat", "94", "--machine", "pres-1");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("did you mean 'press-1'", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Records_that_are_wrong_stop_nothing_but_are_not_searched()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "content"));
        File.WriteAllText(Path.Combine(_folder, "content", "records.yaml"), "part: x\nkind: bearng\nname: X\n");
        var run = Tool.Run(_folder, "repeat", "94", "--json");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal("94 mm", (string?)run.Json["lines"]![0]!["figure"]);
        Assert.Contains(NotSearched, run.Error, StringComparison.Ordinal);
        Assert.Contains("crossref check", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void No_records_at_all_are_nothing_to_speak_of()
    {
        var run = Tool.Run(_folder, "repeat", "94");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("29.9 mm across", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_was_named_but_is_not_there_is_spoken_of()
    {
        var run = Tool.Run(_folder, "repeat", "94", "--content", "contant");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("contant", run.Error, StringComparison.Ordinal);
        Assert.Contains(NotSearched, run.Error, StringComparison.Ordinal);
    }
}

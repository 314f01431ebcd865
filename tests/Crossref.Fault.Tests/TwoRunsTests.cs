using Crossref.Core.Storing;

namespace Crossref.Fault.Tests;

/// <summary>Several programs on one folder.</summary>
public class TwoRunsTests
{
    [Theory]
    [MemberData(nameof(Scenario.Names), MemberType = typeof(Scenario))]
    public void Two_runs_at_once_end_as_one_does(string name)
    {
        var scenario = Scenario.Of(name);
        using var aftermath = new Aftermath(scenario);
        for (var round = 0; round < 2; round++)
        {
            using var shop = aftermath.Start.Copy();
            using var first = Executable.Start(Scenario.Arguments(scenario.Line, shop.Folder));
            using var second = Executable.Start(Scenario.Arguments(scenario.Line, shop.Folder));
            var runs = new[] { Executable.End(first), Executable.End(second) };
            Assert.Contains(runs, r => r.ExitCode == 0);
            Assert.All(runs, r => Assert.True(r.ExitCode == 0 || r.ExitCode == 2 && (r.Error.Contains("Another Crossref", StringComparison.Ordinal) || scenario.IsOnce && r.Error.Contains("Nothing is to be chosen", StringComparison.Ordinal)), r.Error));
            aftermath.AssertNothingLost(shop, "two runs");
            aftermath.AssertNextRunHeals(shop, "two runs");
        }
    }

    [Theory]
    [InlineData("build --out {dir}/place")]
    [InlineData("pack {dir}/place")]
    public void A_folder_that_another_program_writes_is_left_to_it(string line)
    {
        using var shop = Shop.Before(Scenario.All[0]);
        Directory.CreateDirectory(Path.Combine(shop.Folder, "place"));
        using (FolderLock.Take(Path.Combine(shop.Folder, "place/.crossref-lock")))
        {
            var run = Executable.Run(Scenario.Arguments(line, shop.Folder));
            Assert.Equal(2, run.ExitCode);
            Assert.Contains("Another Crossref is at work", run.Error, StringComparison.Ordinal);
            Assert.Empty(shop.Files("place/"));
        }
        shop.RunFine(line);
    }

    [Theory]
    [MemberData(nameof(Scenario.Names), MemberType = typeof(Scenario))]
    public async Task A_file_that_comes_and_goes_while_it_is_read_is_named_and_harms_nothing(string name)
    {
        var scenario = Scenario.Of(name);
        using var aftermath = new Aftermath(scenario);
        using var shop = aftermath.Start.Copy();
        using var enough = new CancellationTokenSource();
        // What combining does not see here it brings in again, so it is tried on a note that the other copy lacks. What is
        // done but once cannot note a changed record afterwards, so it is tried on the note as well, which did not change.
        var coming = scenario.IsOnce || scenario.Line.StartsWith("combine", StringComparison.Ordinal) ? "content/notes/grease.md" : "content/parts/rollers.yaml";
        var (file, aside) = (Path.Combine(shop.Folder, coming), Path.Combine(shop.Folder, "aside"));
        var toggling = Task.Run(() =>
        {
            while (!enough.IsCancellationRequested)
            {
                File.Move(file, aside);
                Thread.Yield();
                File.Move(aside, file);
                Thread.Yield();
            }
        });
        try
        {
            for (var run = 0; run < 30; run++)
            {
                // Whatever it finds, it ends in words and with one of its exit codes; an exception would end this test.
                var result = InProcess.Run(Scenario.Arguments(scenario.Line, shop.Folder));
                Assert.True(result.ExitCode is 0 or 1 or 2, result.Error);
                // What combining finds in the records is its answer; what keeps a command from running is an error.
                if (result.ExitCode != 0) Assert.NotEmpty(result.ExitCode == 1 ? result.Error + result.Output : result.Error);
            }
        }
        finally
        {
            await enough.CancelAsync();
            await toggling;
        }
        aftermath.AssertNextRunHeals(shop, "a file that came and went");
    }

    [Fact]
    public void A_file_that_vanishes_between_reading_and_packing_leaves_the_stick_as_it_was()
    {
        var scenario = Scenario.Of("later pack");
        using var aftermath = new Aftermath(scenario);
        using var shop = aftermath.Start.Copy();
        var run = InProcess.Run(Scenario.Arguments(scenario.Line, shop.Folder), new VanishingDisk("claims/c.yaml"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("c.yaml", run.Error, StringComparison.Ordinal);
        Assert.Empty(Shop.Differences(shop.Files("stick/"), aftermath.Start.Files("stick/")));
        Assert.Equal(0, InProcess.Run(["verify", Path.Combine(shop.Folder, "stick")]).ExitCode);
    }
}

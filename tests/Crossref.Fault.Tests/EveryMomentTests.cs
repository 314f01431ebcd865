using System.Collections.Concurrent;
using Crossref.Tests.Faults;

namespace Crossref.Fault.Tests;

/// <summary>Every single write, flush, rename, delete and new folder of a command fails in turn, in every way that a disk can fail.</summary>
public class EveryMomentTests
{
    private static readonly DiskFault[] Faults = Enum.GetValues<DiskFault>();

    [Theory]
    [MemberData(nameof(Scenario.Names), MemberType = typeof(Scenario))]
    public void A_disk_that_fails_at_any_moment_loses_nothing_and_the_next_run_heals(string name)
    {
        var scenario = Scenario.Of(name);
        using var aftermath = new Aftermath(scenario);
        var moments = MomentsOf(aftermath, scenario);
        Assert.True(moments > 10);
        // A first run is long and its moments are much alike: each fails in one way. A later run fails in every way at each.
        var failures = scenario.Before.Length == 0
            ? Enumerable.Range(1, moments).Select(m => (Moment: m, Fault: Faults[m % Faults.Length]))
            : Enumerable.Range(1, moments).SelectMany(m => Faults.Select(f => (Moment: m, Fault: f)));
        var (unfinished, told) = (new ConcurrentBag<bool>(), new ConcurrentBag<string>());
        Parallel.ForEach(failures, new ParallelOptions { MaxDegreeOfParallelism = 2 }, failure =>
        {
            var moment = $"{failure.Fault} at {failure.Moment} of {moments}";
            using var shop = aftermath.Start.Copy();
            var disk = new FailingDisk(failure.Moment, failure.Fault);
            var run = InProcess.Run(Scenario.Arguments(scenario.Line, shop.Folder), disk);
            Assert.True(disk.Count >= failure.Moment, moment);
            Assert.True(run.ExitCode is 2 or 0, $"{moment}: {run.ExitCode}\n{run.Error}");
            if (run.ExitCode == 2) told.Add(run.Error);
            unfinished.Add(aftermath.AssertNothingLost(shop, moment, finished: run.ExitCode == 0));
            aftermath.AssertNextRunHeals(shop, moment);
        });
        Assert.True(unfinished.Count(u => u) > moments / 2, "hardly any failure left anything to heal");
        Assert.All(told, t => Assert.Contains("No space left on device", t, StringComparison.Ordinal));
        Assert.True(told.Count > moments / 2);
    }

    private static int MomentsOf(Aftermath aftermath, Scenario scenario)
    {
        using var shop = aftermath.Start.Copy();
        var counting = new FailingDisk(0, DiskFault.Refused);
        Assert.Equal(0, InProcess.Run(Scenario.Arguments(scenario.Line, shop.Folder), counting).ExitCode);
        return counting.Count;
    }
}

using System.Diagnostics;

namespace Crossref.Fault.Tests;

/// <summary>The real executable is killed at random moments.</summary>
public class KillTests
{
    // Nine scenarios make more than two hundred.
    private const int Kills = 24;

    [Theory]
    [MemberData(nameof(Scenario.Names), MemberType = typeof(Scenario))]
    public void A_killed_run_loses_nothing_and_the_next_run_heals(string name)
    {
        var scenario = Scenario.Of(name);
        using var aftermath = new Aftermath(scenario);
        var duration = Duration(aftermath, scenario);
        var random = new Random(name.Length);
        // Half of the kills come at any moment. The others aim at the writing: each comes sooner than the one before it until
        // it left something to heal. A run that was faster than its kill is done again.
        var kills = Enumerable.Range(0, Kills).Select(i => (Number: i, Share: random.NextDouble())).ToList();
        Parallel.ForEach(kills, new ParallelOptions { MaxDegreeOfParallelism = 2 }, kill =>
        {
            var aimed = kill.Number % 2 == 0;
            var patience = duration * kill.Share / (aimed ? 8 : 1);
            for (var tries = 0; ; tries++, patience /= 2)
            {
                Assert.True(tries < 50, aimed ? "no kill left anything to heal" : "no run could be caught");
                using var shop = aftermath.Start.Copy();
                using var process = Executable.Start(Scenario.Arguments(scenario.Line, shop.Folder));
                while (aimed && !process.HasExited && !HasBegun(shop.Folder)) Thread.Sleep(1);
                Thread.Sleep(patience);
                process.Kill();
                process.WaitForExit();
                var moment = $"killed, number {kill.Number}";
                var left = aftermath.AssertNothingLost(shop, moment);
                aftermath.AssertNextRunHeals(shop, moment);
                if (process.ExitCode != 0 && (left || !aimed)) return;
            }
        });
    }

    private static TimeSpan Duration(Aftermath aftermath, Scenario scenario)
    {
        using var shop = aftermath.Start.Copy();
        var watch = Stopwatch.StartNew();
        Assert.Equal(0, Executable.Run(Scenario.Arguments(scenario.Line, shop.Folder)).ExitCode);
        return watch.Elapsed;
    }

    private static bool HasBegun(string folder) =>
        Directory.Exists(Path.Combine(folder, "site/.crossref-next")) || Directory.Exists(Path.Combine(folder, "stick/.crossref-next")) || Directory.Exists(Path.Combine(folder, "content/.crossref/next"));
}

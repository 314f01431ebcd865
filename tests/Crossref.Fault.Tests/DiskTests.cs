namespace Crossref.Fault.Tests;

/// <summary>The real executable on a disk that is full or cannot be written.</summary>
public class DiskTests
{
    private const int Steps = 4;

    [SmallDiskTheory]
    [MemberData(nameof(Scenario.Names), MemberType = typeof(Scenario))]
    public void A_full_disk_is_named_and_nothing_is_lost(string name)
    {
        var scenario = Scenario.Of(name);
        using var aftermath = new Aftermath(scenario);
        var (start, end) = (Size(aftermath.Start), SizeAfter(aftermath, scenario));
        var full = 0;
        for (var step = 1; step <= Steps; step++)
        {
            using var disk = SmallDisk.Mount(16_000_000)!;
            var shop = aftermath.Start.Copy(Path.Combine(disk.Folder, "shop"));
            disk.Remount(FormattableString.Invariant($"size={start + Math.Max(end - start, 40_000) * (step - 1) / Steps}"));
            var run = Executable.Run(Scenario.Arguments(scenario.Line, shop.Folder));
            Assert.True(run.ExitCode is 0 or 2, run.Error);
            if (run.ExitCode == 2)
            {
                full++;
                Assert.Contains("No space left", run.Error, StringComparison.Ordinal);
            }
            aftermath.AssertNothingLost(shop, $"full disk, step {step}");
            disk.Remount("size=64m");
            aftermath.AssertNextRunHeals(shop, $"full disk, step {step}");
        }
        // What writes a few pages only finds room for them sooner.
        Assert.True(full >= (end - start > 40_000 ? 2 : 1), $"the disk was full {full} times only");
    }

    [SmallDiskTheory]
    [MemberData(nameof(Scenario.Names), MemberType = typeof(Scenario))]
    public void A_folder_that_cannot_be_written_is_named_and_left_alone(string name)
    {
        var scenario = Scenario.Of(name);
        using var aftermath = new Aftermath(scenario);
        using var disk = SmallDisk.Mount(64_000_000)!;
        var shop = aftermath.Start.Copy(Path.Combine(disk.Folder, "shop"));
        disk.Remount("ro");
        var run = Executable.Run(Scenario.Arguments(scenario.Line, shop.Folder));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Read-only file system", run.Error, StringComparison.Ordinal);
        Assert.Empty(Shop.Differences(shop.Files(), aftermath.Start.Files()));
        disk.Remount("rw");
        aftermath.AssertNextRunHeals(shop, "read-only");
    }

    private static long SizeAfter(Aftermath aftermath, Scenario scenario)
    {
        using var shop = aftermath.Start.Copy();
        shop.RunFine(scenario.Line);
        return Size(shop);
    }

    // What a disk in memory takes: whole pages for files, and one for each folder.
    private static long Size(Shop shop) => shop.Files().Values.Sum(f => (f.Length + 4095L) / 4096 * 4096);
}

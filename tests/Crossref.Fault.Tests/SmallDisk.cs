namespace Crossref.Fault.Tests;

/// <summary>A disk in memory of a given size, where the system allows mounting one.</summary>
internal sealed class SmallDisk : IDisposable
{
    private SmallDisk(string folder) => Folder = folder;

    public string Folder { get; }

    /// <summary>Makes one; null where mounting is refused.</summary>
    public static SmallDisk? Mount(long bytes)
    {
        var folder = Directory.CreateTempSubdirectory("small-disk-").FullName;
        if (Executable.Other("mount", "-t", "tmpfs", "-o", FormattableString.Invariant($"size={bytes}"), "tmpfs", folder)?.ExitCode == 0) return new SmallDisk(folder);
        Directory.Delete(folder);
        return null;
    }

    public void Remount(string options) => Assert.Equal(0, Executable.Other("mount", "-o", "remount," + options, Folder)!.ExitCode);

    public void Dispose()
    {
        Executable.Other("umount", "-l", Folder);
        Directory.Delete(Folder);
    }
}

/// <summary>A test that needs a disk of its own.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class SmallDiskTheoryAttribute : TheoryAttribute
{
    private static readonly Lazy<bool> Allowed = new(() =>
    {
        using var disk = SmallDisk.Mount(65536);
        return disk is not null;
    });

    public SmallDiskTheoryAttribute()
    {
        if (!Allowed.Value) Skip = "This system does not let the tests mount a small disk; run them as root to have full and read-only disks tried.";
    }
}

namespace Crossref.Fault.Tests;

/// <summary>A packed stick laid into a FAT32 image with Debian's tools and read back.</summary>
public class FatTests
{
    private static readonly bool HasTools = Executable.Other("mcopy", "-V") is not null && Executable.Other(MakeFat, "--help") is not null;

    private static string MakeFat => File.Exists("/usr/sbin/mkfs.fat") ? "/usr/sbin/mkfs.fat" : "mkfs.fat";

    [FatFact]
    public void Every_name_and_byte_survives_FAT32()
    {
        using var shop = Shop.Before(Scenario.All[0]);
        shop.Write("content/pictures/Two words, and a dot.s.bin", "x");
        shop.Write("content/pictures/Übersicht 2.bin", [0, 255, 10, 13]);
        shop.Write("content/.crossref/kept/x", "an earlier state");
        shop.Write("content/pictures/" + new string('n', 150) + ".bin", [1]);
        shop.RunFine("pack {dir}/stick --tools {dir}/tools");
        var image = Path.Combine(shop.Folder, "stick.img");
        Do(MakeFat, "-C", "-F", "32", "-s", "1", image, "65536");
        Do("mcopy", "-s", "-i", image, Path.Combine(shop.Folder, "stick"), "::/");
        Directory.CreateDirectory(Path.Combine(shop.Folder, "back"));
        Do("mcopy", "-s", "-i", image, "::/stick", Path.Combine(shop.Folder, "back"));
        var (there, back) = (shop.Below("stick/"), shop.Below("back/stick/"));
        Assert.Empty(Shop.Differences(there, back));
        Assert.Contains("content/.crossref/kept/x", back.Keys);
        var verify = Executable.Run(["verify", Path.Combine(shop.Folder, "back/stick")]);
        Assert.True(verify.ExitCode == 0, verify.Output);
    }

    private static void Do(string name, params string[] arguments)
    {
        // Names beyond ASCII pass through the FAT tools as the locale says.
        Environment.SetEnvironmentVariable("LC_ALL", "C.UTF-8");
        var run = Executable.Other(name, arguments)!;
        Assert.True(run.ExitCode == 0, $"{name}: {run.Error}{run.Output}");
    }

    [AttributeUsage(AttributeTargets.Method)]
    private sealed class FatFactAttribute : FactAttribute
    {
        public FatFactAttribute()
        {
            if (!HasTools) Skip = "mtools and dosfstools are not installed; tests/all.sh installs them.";
        }
    }
}

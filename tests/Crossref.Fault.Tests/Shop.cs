namespace Crossref.Fault.Tests;

/// <summary>A small shop's folder, which a test may spoil.</summary>
internal sealed class Shop : IDisposable
{
    private Shop(string? folder = null)
    {
        Folder = folder ?? Path.Combine(Place, "crossref-fault-" + Guid.NewGuid().ToString("n"));
        Directory.CreateDirectory(Folder);
    }

    // In memory where the system has such a place: thousands of copies are made.
    public static string Place { get; } = Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath();

    public string Folder { get; }

    /// <summary>The folder before the disturbed run: what the older content led to, then the newer content.</summary>
    public static Shop Before(Scenario scenario)
    {
        var shop = new Shop();
        shop.Write("tools/linux-x64/crossref", "stands for the tool");
        shop.Write("content/library.yaml", "library: my-shop\ntitle: My shop\nmains: 230\n---\nsource: red-book\ntype: repair\ntitle: The red workshop book\n");
        shop.Write("content/parts/rollers.yaml", "part: brg-os-1203\nkind: bearing\nname: Bearing, fold roller\nmaker: Ostrin\nnumbers: [OS-1203-02]\n");
        shop.Write("content/parts/old.yaml", "part: brg-vm-0907\nkind: bearing\nname: Bearing from the old Velm\nmaker: Velm\nnumbers: [VM-0907]\n");
        shop.Write("content/notes/grease.md", "---\ntitle: Grease\n---\nNever the white one.\n");
        shop.Write("parts.csv", "kind,name,maker,number\nroller,\"Roller, feed\",Ostrin,OS-0700\ngear,Gear,Ostrin,OS-0701\n");
        if (scenario.HasMachine)
            shop.Write("content/folder.yaml", "family: f2\nname: F2\nmaker: Ostrin\nmodels: [{model: F2}]\nassemblies: [{assembly: head, name: Head, positions: [{position: roller, name: Roller, kind: bearing, listed: [brg-os-1203]}]}]\n---\nmachine: folder\nfamily: f2\nmodel: F2\n");
        // Another copy of this library, and what another shop brought to it.
        shop.Write("other/library.yaml", "library: my-shop\ntitle: My shop\nmains: 230\n---\nsource: red-book\ntype: repair\ntitle: The red workshop book, volume 2\n");
        shop.Write("other/parts/rollers.yaml", "part: brg-os-1203\nkind: bearing\nname: Bearing, fold roller\nmaker: Ostrin\nnumbers: [OS-1203-02]\nprice: 4\n");
        shop.Write("other/parts/gears.yaml", "part: gear-os-0432\nkind: gear\nname: Gear\nmaker: Ostrin\nnumbers: [OS-0432-01]\n");
        shop.Write("other/from/mill/mill.yaml", "library: mill\ntitle: Mill Lane\n---\nclaim: 2026-01-05-mill-aaaa\npart: gear-os-0432\nreplaces: brg-os-1203\nverdict: does-not-fit\nbasis: told\n");
        foreach (var line in scenario.Before) shop.RunFine(line);
        if (scenario.Before.Length > 0)
        {
            shop.Write("content/parts/rollers.yaml", "part: brg-os-1203\nkind: bearing\nname: Bearing, fold roller, rear\nmaker: Ostrin\nnumbers: [OS-1203-03]\nearlier-numbers: [OS-1203-02]\n");
            File.Delete(Path.Combine(shop.Folder, "content/parts/old.yaml"));
            shop.Write("content/claims/c.yaml", "claim: 2026-02-11-my-shop-a2b3\npart: brg-os-1204\nreplaces: brg-os-1203\nverdict: fits\nbasis: measured\nsource: red-book\nby: M. Orr\ndate: 2026-02-11\n---\npart: brg-os-1204\nkind: bearing\nname: Bearing, front\nmaker: Ostrin\nnumbers: [OS-1204]\n");
        }
        return shop;
    }

    /// <summary>The same folder again, at a place of its own or a given one.</summary>
    public Shop Copy(string? folder = null)
    {
        var copy = new Shop(folder);
        foreach (var (path, bytes) in All(Folder)) copy.Write(path, bytes);
        return copy;
    }

    public void Write(string path, string text) => Write(path, System.Text.Encoding.UTF8.GetBytes(text));

    public void Write(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(Folder, path))!);
        File.WriteAllBytes(Path.Combine(Folder, path), bytes);
    }

    /// <summary>Runs a command line that must go well.</summary>
    public void RunFine(string line)
    {
        var run = InProcess.Run(Scenario.Arguments(line, Folder));
        Assert.True(run.ExitCode == 0, $"{line}: {run.ExitCode}\n{run.Error}{run.Output}");
    }

    /// <summary>Every file that matters, with what is in it: a lock that nobody holds does not.</summary>
    public Dictionary<string, byte[]> Files(string below = "") =>
        All(Folder).Where(f => f.Path.StartsWith(below, StringComparison.Ordinal)).ToDictionary(f => f.Path, f => f.Bytes);

    /// <summary>The files of one of its folders, by their paths in there.</summary>
    public Dictionary<string, byte[]> Below(string folder) => Files(folder).ToDictionary(f => f.Key[folder.Length..], f => f.Value);

    /// <summary>The paths in which two sets of files differ.</summary>
    public static IEnumerable<string> Differences(Dictionary<string, byte[]> one, Dictionary<string, byte[]> other) =>
        one.Keys.Union(other.Keys).Where(path => !one.TryGetValue(path, out var a) || !other.TryGetValue(path, out var b) || !a.AsSpan().SequenceEqual(b)).Order(StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private static IEnumerable<(string Path, byte[] Bytes)> All(string folder) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(f => Path.GetFileName(f) is not (".crossref-lock" or "lock")).Select(f => (Path.GetRelativePath(folder, f).Replace('\\', '/'), File.ReadAllBytes(f)));
}

using System.Diagnostics;
using System.Reflection.PortableExecutable;

namespace Crossref.Fault.Tests;

/// <summary>
/// The tools for a stick, where generator/publish.sh was run. The one for Linux runs here; of the others the form can be looked at.
/// </summary>
public class PublishedToolTests
{
    [PublishedFact]
    public void The_tool_for_Windows_is_a_valid_64_bit_console_program_and_carries_everything()
    {
        using var file = File.OpenRead(Path.Combine(Folder, "win-x64/crossref.exe"));
        using var program = new PEReader(file);
        Assert.Equal(Machine.Amd64, program.PEHeaders.CoffHeader.Machine);
        Assert.Equal(Subsystem.WindowsCui, program.PEHeaders.PEHeader!.Subsystem);
        Assert.True(program.PEHeaders.CoffHeader.Characteristics.HasFlag(Characteristics.ExecutableImage));
        Assert.All(program.PEHeaders.SectionHeaders, s => Assert.True(s.PointerToRawData + s.SizeOfRawData <= file.Length));
        Assert.InRange(file.Length, 20_000_000, 60_000_000);
    }

    [PublishedFact]
    public void The_four_together_stay_below_200_MB_and_begin_as_their_system_wants()
    {
        var tools = new (string Path, byte[] Start)[]
        {
            ("win-x64/crossref.exe", "MZ"u8.ToArray()), ("linux-x64/crossref", [0x7F, .. "ELF"u8]), ("osx-arm64/crossref", [0xCF, 0xFA, 0xED, 0xFE]), ("osx-x64/crossref", [0xCF, 0xFA, 0xED, 0xFE]),
        };
        foreach (var (path, start) in tools)
        {
            using var file = File.OpenRead(Path.Combine(Folder, path));
            Assert.Equal(start, start.Select(_ => (byte)file.ReadByte()));
        }
        Assert.True(tools.Sum(t => new FileInfo(Path.Combine(Folder, t.Path)).Length) < 200_000_000);
    }

    [PublishedFact]
    public void The_one_for_Linux_packs_and_its_copy_on_the_stick_answers_where_nothing_else_is_installed()
    {
        using var shop = Shop.Before(Scenario.All[0]);
        var (content, stick) = (Path.Combine(shop.Folder, "content"), Path.Combine(shop.Folder, "stick"));
        // The one of the tests, which needs an installed .NET, finds none there.
        Assert.NotEqual(0, RunAlone(Path.Combine(AppContext.BaseDirectory, "crossref"), "--version").ExitCode);
        Alone(Path.Combine(Folder, "linux-x64/crossref"), "pack", stick, "--content", content, "--tools", Folder);
        Assert.Equal(4, Directory.GetFiles(Path.Combine(stick, "tool"), "crossref*", SearchOption.AllDirectories).Length);
        var tool = Path.Combine(stick, "tool/linux-x64/crossref");
        Alone(tool, "verify", stick);
        Alone(tool, "build", "--content", Path.Combine(stick, "content"), "--out", Path.Combine(shop.Folder, "site"));
        // The list of the files that a build may take away again is of no use on a stick.
        File.Delete(Path.Combine(shop.Folder, "site/crossref-files.sha256"));
        Assert.Empty(Shop.Differences(shop.Below("stick/site/"), shop.Below("site/")));
        string[] find = ["find", "OS-1203", "--json", "--content", Path.Combine(stick, "content")];
        var answer = Alone(tool, find);
        Assert.Contains("brg-os-1203", answer, StringComparison.Ordinal);
        Assert.Equal(Executable.Run(find).Output, answer);
    }

    private static string Alone(string tool, params string[] arguments)
    {
        var run = RunAlone(tool, arguments);
        Assert.True(run.ExitCode == 0, $"{string.Join(' ', arguments)}: {run.Error}{run.Output}");
        return run.Output;
    }

    // As on a PC without .NET: where the system's one lies is overruled by a place that holds none.
    private static RunResult RunAlone(string tool, params string[] arguments)
    {
        var start = new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment.Clear();
        start.Environment["DOTNET_ROOT"] = Folder;
        using var process = Process.Start(start)!;
        return Executable.End(process);
    }

    private static string Folder { get; } = Environment.GetEnvironmentVariable("CROSSREF_TOOLS") ?? Path.Combine(Root(AppContext.BaseDirectory), "publish");

    private static string Root(string folder) => File.Exists(Path.Combine(folder, "Crossref.sln")) ? folder : Root(Path.GetDirectoryName(folder)!);

    [AttributeUsage(AttributeTargets.Method)]
    private sealed class PublishedFactAttribute : FactAttribute
    {
        public PublishedFactAttribute()
        {
            if (!Directory.Exists(Folder)) Skip = "The tools are not published here; bash generator/publish.sh does that.";
        }
    }
}

using System.Reflection.PortableExecutable;

namespace Crossref.Fault.Tests;

/// <summary>The tools for other systems, where generator/publish.sh was run. They cannot be started here; their form can be looked at.</summary>
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

    private static string Folder { get; } = Environment.GetEnvironmentVariable("CROSSREF_TOOLS") ?? Path.Combine(Root(AppContext.BaseDirectory), "publish");

    private static string Root(string folder) => File.Exists(Path.Combine(folder, "Crossref.sln")) ? folder : Root(Path.GetDirectoryName(folder)!);

    [AttributeUsage(AttributeTargets.Method)]
    private sealed class PublishedFactAttribute : FactAttribute
    {
        public PublishedFactAttribute()
        {
            if (!Directory.Exists(Folder)) Skip = "The tools are not published here; bash generator/publish.sh does that in a few minutes.";
        }
    }
}

namespace Crossref.Cli.Tests;

public sealed class CombineCommandTests : IDisposable
{
    private const string Part = "part: gear-1\nkind: gear\nname: Gear\nprice: 4\n";
    private readonly string _folder = Directory.CreateTempSubdirectory("crossref-").FullName;

    public CombineCommandTests()
    {
        foreach (var copy in new[] { "ours", "stick/content" })
        {
            Write(copy + "/library.yaml", "library: ferry-lane\ntitle: Ferry Lane Print Room\n");
            Write(copy + "/parts.yaml", Part);
        }
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, path))!);
        File.WriteAllText(Path.Combine(_folder, path), text);
    }

    private ToolRun Combine(params string[] arguments) => Tool.Run(_folder, ["combine", "--content", "ours", "--date", "2026-02-11", .. arguments]);

    [Fact]
    public void What_two_shops_numbered_alike_is_named_after_it_came_in()
    {
        Write("ours/parts.yaml", Part + "maker: Ostrin\nnumbers: [OS-1]\n");
        Write("mill/library.yaml", "library: mill\ntitle: Mill Lane\n");
        Write("mill/parts.yaml", "part: mill-gear\nkind: gear\nname: Gear\nmaker: Ostrin\nnumbers: [OS-1]\n");
        var dry = Combine("mill", "--dry-run", "--json");
        Assert.Equal((1, "CR0501", false), (dry.ExitCode, (string)dry.Json["diagnostics"]![0]!["code"]!, (bool)dry.Json["written"]!));
        Assert.Contains("this would have to be mended", dry.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "ours/from")));
        var run = Combine("mill");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("New here (2):", run.Output, StringComparison.Ordinal);
        Assert.Contains("error CR0501", run.Error, StringComparison.Ordinal);
        Assert.Contains("Mend the errors above; nothing can be built before.", run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(_folder, "ours/from/mill/parts.yaml")));
    }

    [Fact]
    public void A_stick_is_taken_in_after_a_dry_run_that_writes_nothing()
    {
        Assert.Equal(0, Combine("stick").ExitCode);
        Write("stick/content/parts.yaml", Part + "---\n" + Part.Replace("gear-1", "gear-2", StringComparison.Ordinal));
        var before = Everything();
        var dry = Combine("stick", "--dry-run");
        Assert.Contains("New here (1):\n  part gear-2, in parts.yaml\n", dry.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", dry.Output, StringComparison.Ordinal);
        Assert.Equal(before, Everything());
        var run = Combine("stick", "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal("new", (string?)run.Json["decisions"]!.AsArray().Single(d => (string?)d!["id"] == "gear-2")!["outcome"]);
        Assert.Equal(File.ReadAllText(Path.Combine(_folder, "stick/content/parts.yaml")), File.ReadAllText(Path.Combine(_folder, "ours/parts.yaml")));
        Assert.Contains("Nothing had to be written.", Combine("stick").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stick_with_errors_is_refused_and_they_are_named()
    {
        Write("stick/content/more.yaml", "part: ../x\nkind: gear\nname: X\n");
        var before = Everything();
        var run = Combine("stick");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("the other copy: more.yaml:1:7: error CR0206", run.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing was taken.", run.Output, StringComparison.Ordinal);
        Assert.Equal(before, Everything());
    }

    [Theory]
    [InlineData("nowhere", "There is no folder")]
    [InlineData("ours", "is this copy itself")]
    public void A_folder_that_is_no_other_copy_is_said(string folder, string said)
    {
        var run = Combine(folder);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
    }

    // The lock and the folder it is in are made by opening, before anything is known.
    private string Everything() => string.Join('\n', Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories).Where(f => !f.EndsWith("lock", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(f => f + ": " + Convert.ToBase64String(File.ReadAllBytes(f))));
}

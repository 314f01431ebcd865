using System.Text;

namespace Crossref.Cli.Tests;

/// <summary><c>crossref export</c> and <c>crossref import</c>, with the real executable.</summary>
public sealed class SheetCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sheets").FullName;

    private string Content => Path.Combine(_folder, "content");

    public SheetCommandTests()
    {
        Directory.CreateDirectory(Content);
        File.WriteAllText(Path.Combine(Content, "library.yaml"), "library: other-lane\ntitle: Other Lane\n");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_demo_library_goes_out_and_its_parts_come_in_elsewhere()
    {
        var run = Tool.OnDemo("export", "--out", Path.Combine(_folder, "sheets"), "--json");
        Assert.Equal((0, 4), (run.ExitCode, (int)run.Json["written"]!));
        // What parts refer to has to be there.
        File.Copy(Path.Combine(Tool.Demo, "sources.yaml"), Path.Combine(Content, "sources.yaml"));
        var apply = Import("sheets/parts.csv", "--apply", "--json");
        Assert.Equal((0, ""), (apply.ExitCode, apply.Error));
        Assert.Equal(0, Tool.Run(_folder, "export", "--out", "again").ExitCode);
        Assert.Equal(Lines("sheets/parts.csv"), Lines("again/parts.csv"));
        Assert.True(Lines("sheets/parts.csv").Length > 20);
        Assert.Equal(0, Import("sheets/parts.csv", "--apply").ExitCode);
        Assert.Single(Directory.EnumerateFiles(Path.Combine(Content, "parts")));
    }

    [Fact]
    public void Nothing_is_written_before_apply_nor_when_something_is_wrong()
    {
        Write("good.csv", "kind,name,number,shelf life\ngear,Gear,OS-1,long\n");
        Write("bad.csv", "kind,name,number\ngear,Gear,OS-1\ngaer,Gear,OS-2\n");
        var preview = Import("good.csv");
        Assert.Equal(0, preview.ExitCode);
        Assert.Contains("shelf life  not used", preview.Output, StringComparison.Ordinal);
        Assert.Contains("--apply writes it", preview.Output, StringComparison.Ordinal);
        var bad = Import("bad.csv", "--apply");
        Assert.Equal(1, bad.ExitCode);
        Assert.Contains("bad.csv:3:1: error CR0205", bad.Output, StringComparison.Ordinal);
        Assert.Equal(["library.yaml"], Records());
        Assert.Equal(0, Import("good.csv", "--apply").ExitCode);
        Assert.Equal(2, Records().Length);
        Assert.Contains("Nothing is new", Import("good.csv", "--apply").Output, StringComparison.Ordinal);
        Assert.Equal(2, Records().Length);
    }

    [Fact]
    public void A_sheet_that_somebody_changed_is_not_overwritten()
    {
        Assert.Equal(0, Tool.Run(_folder, "export").ExitCode);
        Assert.Equal(0, Tool.Run(_folder, "export").ExitCode);
        File.AppendAllText(Path.Combine(_folder, "sheets", "bags.csv"), "mine\r\n");
        var run = Tool.Run(_folder, "export");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("bags.csv was changed", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("mine\r\n", File.ReadAllText(Path.Combine(_folder, "sheets", "bags.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void No_cell_of_the_demo_or_of_a_hostile_library_is_a_formula_whatever_divides_the_cells()
    {
        File.WriteAllText(Path.Combine(Content, "parts.yaml"), "part: p-1\nkind: gear\nname: \"=cmd|'/c calc'!A0\"\nmaker: \"+1\"\nnumbers: [\"@x\", \"-2+3\", \"x;=1\"]\nnote: \"\\\"=1, =2; =3\"\n");
        Assert.Equal(0, Tool.Run(_folder, "export").ExitCode);
        Assert.Contains("cmd|", File.ReadAllText(Path.Combine(_folder, "sheets", "parts.csv")), StringComparison.Ordinal);
        Assert.Equal(0, Tool.OnDemo("export", "--out", Path.Combine(_folder, "demo")).ExitCode);
        foreach (var file in Directory.EnumerateFiles(_folder, "*.csv", SearchOption.AllDirectories))
            Assert.All(File.ReadAllText(file).Split(',', ';', '\t', '\n'), cell => Assert.DoesNotMatch("^[\\s\"]*[=+@-]", cell));
    }

    [Theory]
    [InlineData("missing.csv")]
    [InlineData(".")]
    public void A_sheet_that_is_not_there_is_said(string file) => Assert.Equal(2, Import(file).ExitCode);

    [Fact]
    public void A_mistyped_column_or_field_is_told()
    {
        Write("good.csv", "kind,name,number\ngear,Gear,OS-1\n");
        Assert.Contains("Did you mean number?", Import("good.csv", "--map", "name=nummber").Error, StringComparison.Ordinal);
        Assert.Contains("Did you mean name?", Import("good.csv", "--map", "nane=number").Error, StringComparison.Ordinal);
        Assert.Equal(2, Import("good.csv", "--map", "name").ExitCode);
    }

    [Fact]
    public void A_column_that_is_wrong_in_every_row_does_not_fill_the_screen()
    {
        Write("commas.csv", "kind;name;number;price\n" + string.Concat(Enumerable.Range(1, 130).Select(i => $"gear;Gear;OS-{i};4,50\n")));
        var run = Import("commas.csv");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("\n... and 30 more; --json prints them all.\n130 errors, 0 warnings.\n", run.Output, StringComparison.Ordinal);
        Assert.Equal(100, run.Output.Split(": error ").Length - 1);
        Assert.Equal(130, Import("commas.csv", "--json").Json["diagnostics"]!.AsArray().Count);
    }

    [Fact]
    public void A_gigabyte_is_refused_before_it_is_read()
    {
        using (var file = new FileStream(Path.Combine(_folder, "huge.csv"), FileMode.CreateNew)) file.SetLength(1L << 30);
        var run = Import("huge.csv", "--apply");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("over 32 MB", run.Output, StringComparison.Ordinal);
    }

    private ToolRun Import(string file, params string[] more) => Tool.Run(_folder, ["import", file, "--date", "2026-11-25", .. more]);

    private void Write(string file, string text) => File.WriteAllText(Path.Combine(_folder, file), text, Encoding.UTF8);

    private string[] Lines(string file) => File.ReadAllLines(Path.Combine(_folder, file));

    private string[] Records() => [.. Directory.EnumerateFiles(Content, "*.yaml", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(Content, f)).Order(StringComparer.Ordinal)];
}

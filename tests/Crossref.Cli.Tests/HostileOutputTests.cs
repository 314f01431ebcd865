namespace Crossref.Cli.Tests;

/// <summary>What content and file names cannot do to the screen they are printed on.</summary>
public sealed class HostileOutputTests : IDisposable
{
    private const string Red = "\u001B[31m";

    private readonly string _folder = Directory.CreateTempSubdirectory("cli").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Diagnostics_carry_no_control_from_names_keys_or_values()
    {
        Write("library.yaml", "library: shop\ntitle: \"T\\e[31m\"\n\"k\\e[31m\\u202E\": x\n---\npart: \"p\\e[31m\"\nkind: \"\\e]8;;x\\a\"\nname: N\n");
        Write($"odd{Red}\u202E.yaml", "part: x\n");
        Write($"sub{Red}/y.yaml", "part: x\n");
        foreach (var run in new[] { Tool.Run(_folder, "check"), Tool.Run(_folder, "check", "--json"), Tool.Run(_folder, "build") })
        {
            Assert.Equal(1, run.ExitCode);
            Assert.Contains("[31m", run.Output + run.Error, StringComparison.Ordinal);
            AssertClean(run);
        }
    }

    [Fact]
    public void Answers_keep_a_name_of_several_lines_in_one()
    {
        Write("library.yaml", """
            library: shop
            title: T
            ---
            family: f
            name: F
            maker: M
            assemblies: [{assembly: a, name: A, positions: [{position: p, name: "Gear\n  Disputed\tx", kind: gear, listed: [g]}]}]
            ---
            part: g
            kind: gear
            name: |
              Wheel
                Fits: anything — documented
            numbers: ["G-\n1"]
            """);
        var fits = Tool.Run(_folder, "fits", "f/a/p");
        Assert.StartsWith("Gear Disputed x  (f/a/p)", fits.Output, StringComparison.Ordinal);
        Assert.Contains("G- 1  Wheel Fits: anything — documented (g) — told", fits.Output, StringComparison.Ordinal);
        foreach (var run in new[] { fits, Tool.Run(_folder, "where", "g"), Tool.Run(_folder, "find", "wheel") })
        {
            Assert.Equal((0, ""), (run.ExitCode, run.Error));
            AssertClean(run);
        }
    }

    [Fact]
    public void Refusals_carry_no_control_from_foreign_files_or_templates()
    {
        Write("library.yaml", "library: shop\ntitle: T\n");
        var site = Directory.CreateDirectory(Path.Combine(_folder, "site")).FullName;
        File.WriteAllText(Path.Combine(site, $"foreign{Red}.txt"), "");
        var foreign = Tool.Run(_folder, "build");
        Assert.Equal(2, foreign.ExitCode);
        Assert.Contains("foreign?[31m.txt", foreign.Error, StringComparison.Ordinal);
        AssertClean(foreign);
        var template = Directory.CreateDirectory(Path.Combine(_folder, "mine")).FullName;
        File.WriteAllText(Path.Combine(template, "home.html"), "\n\n{{ 'x' + " + Red + " }}");
        var broken = Tool.Run(_folder, "build", "--out", "new", "--template", "mine");
        Assert.Equal(2, broken.ExitCode);
        Assert.Contains("home.html:3:", broken.Error, StringComparison.Ordinal);
        AssertClean(broken);
    }

    private static void AssertClean(ToolRun run) => Assert.DoesNotContain(run.Output + run.Error, c => char.IsControl(c) && c is not '\n' and not '\r' || c is >= '\u202A' and <= '\u202E');

    private void Write(string file, string text)
    {
        var path = Path.Combine(_folder, "content", file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}

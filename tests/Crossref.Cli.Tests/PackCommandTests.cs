using System.Diagnostics;

namespace Crossref.Cli.Tests;

/// <summary>Packing and verifying a stick.</summary>
public sealed class PackCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pack").FullName;

    public PackCommandTests()
    {
        Write("content/library.yaml", "library: my-shop\ntitle: My <b>shop</b>\nmains: 230\n");
        Write("content/.crossref/history/x", "earlier");
        Write("content/.crossref/journal.next", "passing");
        Write("content/.hidden", "not ours");
        foreach (var tool in new[] { "win-x64/crossref.exe", "linux-x64/crossref", "osx-arm64/crossref", "osx-x64/crossref" }) Write("tools/" + tool, tool);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_stick_holds_everything_and_plain_sha256sum_finds_it_whole()
    {
        var run = Pack("--tools", "tools");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Windows, Linux, macOS (Apple chip), macOS (Intel chip)", run.Output, StringComparison.Ordinal);
        foreach (var file in new[] { "START-HERE.html", "site/index.html", "content/library.yaml", "content/.crossref/history/x", "tool/win-x64/crossref.exe", "update-windows.cmd", "update-linux.sh", "update-mac.command" })
            Assert.True(File.Exists(Stick(file)), file);
        Assert.False(File.Exists(Stick("content/.crossref/journal.next")));
        Assert.False(File.Exists(Stick("content/.hidden")));
        Assert.Contains("My &lt;b&gt;shop&lt;/b&gt;", File.ReadAllText(Stick("START-HERE.html")), StringComparison.Ordinal);
        using var sum = Process.Start(new ProcessStartInfo("sha256sum", ["-c", "--strict", "--quiet", "MANIFEST.sha256"]) { WorkingDirectory = Stick("") })!;
        sum.WaitForExit();
        Assert.Equal(0, sum.ExitCode);
        Assert.Equal(0, Tool.Run(_folder, "verify", "stick").ExitCode);
        Assert.Contains(" 0 were written, 0 removed", Pack("--tools", "tools").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_tools_it_says_so() => Assert.Contains("No tool is on it", Pack().Output, StringComparison.Ordinal);

    [Fact]
    public void Verify_names_each_missing_changed_and_extra_file()
    {
        Pack();
        File.Delete(Stick("site/index.html"));
        File.AppendAllText(Stick("content/library.yaml"), "#");
        Write("stick/extra.txt", "x");
        var run = Tool.Run(_folder, "verify", "stick");
        Assert.Equal(1, run.ExitCode);
        foreach (var line in new[] { "missing  site/index.html", "changed  content/library.yaml", "extra  extra.txt", "does not find somebody who owns the stick" })
            Assert.Contains(line, run.Output, StringComparison.Ordinal);
        Assert.Equal("extra.txt", (string)Tool.Run(_folder, "verify", "stick", "--json").Json["extra"]![0]!);
        Assert.Equal(2, Tool.Run(_folder, "verify", "content").ExitCode);
    }

    [Theory]
    [InlineData("taxes.txt", "taxes.txt")]
    [InlineData("content/claims/new.yaml", "crossref combine")]
    [InlineData("content/library.yaml", "crossref combine")]
    [InlineData("site/notes.txt", "site/notes.txt")]
    public void What_somebody_else_put_on_the_stick_is_left_alone(string path, string says)
    {
        Pack();
        Write("stick/" + path, "mine");
        Write("content/later.yaml", "question: why\nasks: Why?\ndate: 2026-02-11\n");
        var run = Pack();
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Stick(path)));
        Assert.False(File.Exists(Stick("content/later.yaml")));
    }

    [Fact]
    public void A_folder_with_other_files_a_link_or_a_lying_manifest_is_refused()
    {
        Write("stick/mine.txt", "mine");
        Assert.Equal(2, Pack().ExitCode);
        File.Delete(Stick("mine.txt"));
        Pack();
        File.CreateSymbolicLink(Stick("site/link"), Path.Combine(_folder, "tools"));
        Assert.Contains("link", Pack().Error, StringComparison.Ordinal);
        File.Delete(Stick("site/link"));
        Write("stick/mine.txt", "mine");
        File.AppendAllText(Stick("MANIFEST.sha256"), new string('0', 64) + "  mine.txt\n");
        Assert.Equal(2, Pack().ExitCode);
        Assert.Equal("mine", File.ReadAllText(Stick("mine.txt")));
    }

    [Fact]
    public void A_stick_of_another_library_is_replaced_only_when_that_is_said()
    {
        Pack();
        Write("content/library.yaml", "library: other-shop\ntitle: Other\nmains: 230\n");
        Assert.Contains("my-shop", Pack().Error, StringComparison.Ordinal);
        Assert.Equal(0, Pack("--replace").ExitCode);
        Assert.Equal(0, Tool.Run(_folder, "verify", "stick").ExitCode);
    }

    [Fact]
    public void A_stick_that_another_copy_packed_is_taken_in_before_it_is_packed_over()
    {
        Directory.Delete(Path.Combine(_folder, "content/.crossref"), recursive: true);
        Pack();
        Directory.CreateDirectory(Path.Combine(_folder, "second"));
        using (var copy = Process.Start("cp", ["-r", Stick("content"), Path.Combine(_folder, "second", "content")])) copy.WaitForExit();
        Write("second/content/gears.yaml", "part: gear-1\nkind: gear\nname: Gear\n");
        Assert.Equal(0, Tool.Run(_folder, "pack", "stick", "--content", "second/content", "--date", "2026-03-02").ExitCode);
        var run = Pack();
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("The stick holds what this copy does not have yet, such as part gear-1.", run.Error, StringComparison.Ordinal);
        Assert.Contains("crossref combine stick", run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(Stick("content/gears.yaml")));
        Assert.Equal(0, Tool.Run(_folder, "combine", "stick", "--date", "2026-03-01").ExitCode);
        Assert.Equal(0, Pack().ExitCode);
        // What is older there, or was taken out here since, is no news.
        Write("content/gears.yaml", "part: gear-1\nkind: gear\nname: Gear, fold\n");
        Assert.Equal(0, Pack().ExitCode);
        File.Delete(Path.Combine(_folder, "content/gears.yaml"));
        Assert.Equal(0, Pack().ExitCode);
    }

    [Fact]
    public void Names_that_no_stick_holds_are_all_named_and_nothing_is_written()
    {
        foreach (var name in new[] { "pictures/what?.bin", "pictures/aux.bin", "pictures/A.bin", "pictures/a.bin", "pictures/end." }) Write("content/" + name, "x");
        var run = Pack();
        Assert.Equal(2, run.ExitCode);
        foreach (var name in new[] { "pictures/what?.bin", "pictures/aux.bin", "pictures/a.bin: it differs from pictures/A.bin", "pictures/end." })
            Assert.Contains(name, run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Stick("")));
    }

    [Fact]
    public void The_update_script_runs_the_tool_of_this_PC_step_by_step_and_nothing_of_the_stick()
    {
        if (OperatingSystem.IsWindows()) return;
        Pack("--tools", "tools");
        var home = Path.Combine(_folder, "home dir");
        Directory.CreateDirectory(home);
        File.WriteAllText(Path.Combine(home, "crossref"), "#!/bin/sh\necho \"$PWD|$*\" >> log\n[ \"$1\" != \"$(cat stop 2>/dev/null)\" ]\n");
        using (var chmod = Process.Start("chmod", ["+x", Path.Combine(home, "crossref")])) chmod.WaitForExit();
        Assert.Equal(0, Update(home));
        Assert.Equal(new[] { "verify " + Stick(""), "combine " + Stick(""), "build", $"pack {Stick("")} --replace" }.Select(l => home + "|" + l), File.ReadLines(Path.Combine(home, "log")));
        File.Delete(Path.Combine(home, "log"));
        File.WriteAllText(Path.Combine(home, "stop"), "combine");
        Assert.Equal(1, Update(home));
        Assert.Equal(2, File.ReadLines(Path.Combine(home, "log")).Count());
        Assert.Equal(2, Update(Path.Combine(_folder, "nowhere")));
    }

    private int Update(string home)
    {
        var start = new ProcessStartInfo("sh", [Stick("update-linux.sh")]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.Environment["CROSSREF_HOME"] = home;
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode;
    }

    private ToolRun Pack(params string[] more) => Tool.Run(_folder, ["pack", "stick", "--date", "2026-03-01", .. more]);

    private string Stick(string path) => Path.Combine(_folder, "stick", path);

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, path))!);
        File.WriteAllText(Path.Combine(_folder, path), text);
    }
}

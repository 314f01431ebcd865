namespace Crossref.Cli.Tests;

/// <summary>What a hostile library and hostile names of files do to the screen of whoever runs the tool: nothing.</summary>
public sealed class ScreenTests : IDisposable
{
    // Red, the screen cleared, a title set, the line overwritten, a bell, an eight-bit command, a line turned round.
    private const string Commands = "\u001b[31m\u001b[2J\u001b]0;t\u0007\rok\u009b1A\u202Eback\u200B";
    private const string Masked = "?[31m?[2J?]0;t??ok?1A?back?";

    private readonly DirectoryInfo _place = Directory.CreateTempSubdirectory("screen");
    private readonly string _folder;

    public ScreenTests() => _folder = _place.CreateSubdirectory("content").FullName;

    public void Dispose() => _place.Delete(recursive: true);

    [Fact]
    public void What_is_asked_for_is_printed_without_its_commands()
    {
        Write("x.yaml", Library);
        Assert.Contains("Nothing matches " + Masked, Printed("find", Commands), StringComparison.Ordinal);
        Assert.Contains($"There is no position {Masked}", Printed("fits", Commands), StringComparison.Ordinal);
        Assert.Contains($"There is no part {Masked}", Printed("where", Commands), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_record_holds_reaches_no_screen()
    {
        var escaped = string.Concat(Commands.Select(c => c is >= ' ' and <= '~' ? c.ToString() : $"\\u{(int)c:x4}"));
        Write("x.yaml", Library + $"---\npart: p\nkind: other\nname: \"{escaped}\"\n\"{escaped}\": 1\n\"colour\\r\\e[1A\": red\n");
        Assert.Contains("x.yaml:6:7: error CR0004: a control character (U+001B)", Printed("check"), StringComparison.Ordinal);
        foreach (var command in new[] { "build", "fits --all", "where p", "find ok" }) Assert.Contains("CR0004", Printed(command.Split(' ')), StringComparison.Ordinal);
        Assert.Contains("CR0004", Printed("check", "--json"), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_of_files_and_folders_are_printed_without_their_commands()
    {
        Write("x.yaml", Library);
        Write(Commands + ".yaml", "part: q\n");
        Assert.Contains($"{Masked}.yaml: error CR0004", Printed("check"), StringComparison.Ordinal);
        File.Delete(Path.Combine(_folder, Commands + ".yaml"));
        var site = _place.CreateSubdirectory("site").FullName;
        File.WriteAllText(Path.Combine(site, Commands), "mine");
        Assert.Contains("such as " + Masked, Printed("build", "--out", site), StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_over_several_lines_is_printed_in_one()
    {
        Write("x.yaml", Library + "---\npart: p\nkind: other\nname: |\n  Plain\n    brg-9 - documented\nnumbers: [OS-1]\n");
        Assert.StartsWith("Plain brg-9 - documented  (part p)", Printed("find", "OS-1"), StringComparison.Ordinal);
    }

    private const string Library = "library: lane\ntitle: The Lane\n";

    private void Write(string file, string text) => File.WriteAllText(Path.Combine(_folder, file), text);

    // Everything that a command prints; none of it commands a screen.
    private string Printed(params string[] arguments)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        CommandLine.Run([.. arguments, "--content", _folder, "--date", "2026-03-01"], output, error);
        var printed = output.ToString() + error;
        Assert.DoesNotContain(printed.Replace(Environment.NewLine, "\n", StringComparison.Ordinal), c => char.IsControl(c) && c != '\n' || c is '\u202E' or '\u200B');
        return printed;
    }
}

namespace Crossref.Cli.Tests;

/// <summary>Two copies that differ at two keys, and the command that ends it.</summary>
public sealed class ChooseCommandTests : IDisposable
{
    private const string Part = "part: gear-1\nkind: gear\nname: Gear\nprice: 4\nsize:\n  bore: 6\n";
    private readonly string _folder = Directory.CreateTempSubdirectory("crossref-").FullName;

    public ChooseCommandTests()
    {
        foreach (var copy in new[] { "content", "stick/content" }) Write(copy + "/library.yaml", "library: ferry-lane\ntitle: Ferry Lane Print Room\n");
        Write("content/parts.yaml", Part.Replace("4", "7", StringComparison.Ordinal).Replace("bore: 6", "bore: 6.1", StringComparison.Ordinal));
        Write("stick/content/parts.yaml", Part);
        var run = Run("combine", "stick");
        Assert.Contains("crossref choose shows what to choose from", run.Output, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, path))!);
        File.WriteAllText(Path.Combine(_folder, path), text);
    }

    private string Parts => File.ReadAllText(Path.Combine(_folder, "content/parts.yaml"));

    private ToolRun Run(params string[] arguments) => Tool.Run(_folder, [.. arguments, "--date", "2026-02-11"]);

    private string Everything() => string.Join('\n', Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories).Where(f => !f.EndsWith("lock", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(f => f + ": " + Convert.ToBase64String(File.ReadAllBytes(f))));

    [Fact]
    public void The_list_shows_the_texts_with_their_numbers_and_writes_nothing()
    {
        var before = Everything();
        var run = Run("choose");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("part gear-1: price\n  1  in force until you choose, written in ferry-lane, noted 2026-02-11\n       price: 7\n  2  kept aside, written in ferry-lane, noted 2026-02-11\n       price: 4\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("part gear-1: size / bore\n", run.Output, StringComparison.Ordinal);
        Assert.EndsWith("To put a text in force: crossref choose gear-1 \"price\" 1, or another number.\n", run.Output, StringComparison.Ordinal);
        Assert.Equal(before, Everything());
        var open = Run("choose", "--json").Json["open"]!.AsArray();
        Assert.Equal(["price", "size / bore"], open.Select(o => (string?)o!["key"]));
        Assert.Equal([true, false], open[0]!["texts"]!.AsArray().Select(t => (bool)t!["inForce"]!));
        Assert.Contains("crossref choose shows the texts", Run("check").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_is_chosen_by_its_number_after_a_dry_run_that_writes_nothing()
    {
        var before = Everything();
        var dry = Run("choose", "gear-1", "price", "2", "--dry-run");
        Assert.Contains("part gear-1, price: text 2 is what would be in force.\n    price: 4\nNothing was written.", dry.Output, StringComparison.Ordinal);
        Assert.Equal(before, Everything());
        var run = Run("choose", "gear-1", "price", "2");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal("part gear-1, price: text 2 is in force now.\n    price: 4\nStill open: part gear-1, size / bore.\n", run.Output);
        Assert.Contains("price: 4\n", Parts, StringComparison.Ordinal);
        // One key is left, so that its name may be left out.
        var last = Run("choose", "gear-1", "2", "--json").Json;
        Assert.True((bool)last["written"]!);
        Assert.Empty(last["open"]!.AsArray());
        Assert.Contains("conflicts/part-gear-1.txt", last["files"]!.AsArray().Select(f => (string?)f));
        Assert.Equal(Part, Parts);
        Assert.False(File.Exists(Path.Combine(_folder, "content/conflicts/part-gear-1.txt")));
        Assert.Equal("Nothing is open.\n", Run("choose").Output);
        // The stick still says what it said, and that is known.
        Assert.Equal(0, Run("combine", "stick").ExitCode);
        Assert.Equal("Nothing is open.\n", Run("choose").Output);
    }

    [Theory]
    [InlineData("size/bore")]
    [InlineData("bore")]
    [InlineData("size / bore")]
    public void A_key_goes_by_its_last_words_with_blanks_or_without(string key)
    {
        Assert.Equal(0, Run("choose", "gear-1", key, "2").ExitCode);
        Assert.Contains("bore: 6\n", Parts, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Nothing is to be chosen of gear-9.", "gear-9", "1")]
    [InlineData("Which text?", "gear-1")]
    [InlineData("Of gear-1 more than one thing is to be chosen.", "gear-1", "1")]
    [InlineData("Of gear-1 nothing is to be chosen at name.", "gear-1", "name", "1")]
    [InlineData("3 is not the number of a text.", "gear-1", "price", "3")]
    [InlineData("0 is not the number of a text.", "gear-1", "price", "0")]
    [InlineData("four is not the number of a text.", "gear-1", "price", "four")]
    public void What_cannot_be_meant_is_said_and_nothing_is_written(string said, params string[] words)
    {
        var before = Everything();
        var run = Run(["choose", .. words]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Everything());
    }

    [Fact]
    public void A_folder_with_errors_is_mended_first()
    {
        Write("content/more.yaml", "part: ../x\nkind: gear\nname: X\n");
        var run = Run("choose", "gear-1", "price", "2");
        Assert.Equal((1, ""), (run.ExitCode, run.Output));
        Assert.Contains("Nothing was chosen. Mend the errors above first.", run.Error, StringComparison.Ordinal);
        Assert.Equal("more.yaml", (string?)Run("choose", "gear-1", "price", "2", "--json").Json["diagnostics"]![0]!["file"]);
        Assert.Contains("price: 7\n", Parts, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2\n-\nyes\n", "price: 4\n", 1)]
    [InlineData("9\n1\n2\n\n", "bore: 6\n", 0)]
    [InlineData("2\n2\nno\n", "price: 7\n", 2)]
    [InlineData("2\n", "price: 7\n", 2)]
    [InlineData("-\n-\n", "price: 7\n", 2)]
    public void At_a_keyboard_it_asks_for_each(string typed, string says, int open)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        string[] arguments = ["--content", Path.Combine(_folder, "content"), "--date", "2026-02-12"];
        Assert.Equal(0, CommandLine.Run(["choose", .. arguments], output, error, input: new StringReader(typed), atKeyboard: true));
        Assert.Contains("part gear-1: price\n", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("Which one is right?", error.ToString(), StringComparison.Ordinal);
        Assert.Contains(says, Parts, StringComparison.Ordinal);
        Assert.Equal(open, Run("choose", "--json").Json["open"]!.AsArray().Count);
    }
}

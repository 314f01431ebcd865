namespace Crossref.Cli.Tests;

/// <summary>What lies in the inbox when the site is built.</summary>
public sealed class InboxCommandTests : IDisposable
{
    private const string Id = "2026-11-25-ferry-lane-aaaa";

    private const string Finding = $"""
        # saved by the record page
        claim: {Id}
        part: brg-vm-0907
        at: ostrin-f2/fold-head/roller-2-bearing-front
        verdict: fits
        basis: seated
        source: workshop-log
        date: 2026-11-25

        """;

    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void A_finding_is_taken_in_and_stands_in_the_site_at_once()
    {
        _shop.Write("inbox/finding (2).yaml", Finding);
        var run = _shop.Run("build");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("Taken in from the inbox: " + Id, run.Output, StringComparison.Ordinal);
        Assert.Equal(Finding, _shop.Read($"claims/{Id}.yaml"));
        Assert.False(_shop.Has("inbox/finding (2).yaml"));
        Assert.Contains(Directory.EnumerateFiles(Path.Combine(_shop.Content, "..", "site"), "*.html", SearchOption.AllDirectories), f => File.ReadAllText(f).Contains(Id, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_file_twice_changes_nothing()
    {
        _shop.Write("inbox/a.yaml", Finding);
        _shop.Write("inbox/b.yaml", Finding.Replace("\n", "\r\n", StringComparison.Ordinal));
        Assert.Equal([Id], _shop.Run("build", "--json").Json["takenIn"]!.AsArray().Select(i => (string)i!));
        var before = _shop.Files;
        _shop.Write("inbox/again.yaml", Finding);
        var run = _shop.Run("build", "--json");
        Assert.Empty(run.Json["takenIn"]!.AsArray());
        Assert.Equal("", run.Error);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void What_is_refused_stays_is_said_and_holds_nothing_else_up()
    {
        _shop.Write("inbox/bad.yaml", Finding.Replace("seated", "sat", StringComparison.Ordinal).Replace("aaaa", "bbbb", StringComparison.Ordinal));
        _shop.Write("inbox/good.yaml", Finding);
        _shop.Write("inbox/other.yaml", Finding.Replace("seated", "told", StringComparison.Ordinal));
        var run = _shop.Run("build", "--json");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal([Id], run.Json["takenIn"]!.AsArray().Select(i => (string)i!));
        Assert.Contains("inbox/bad.yaml:6:8: warning CR1002: not taken in: 'sat' is not a word for 'basis'", run.Error, StringComparison.Ordinal);
        Assert.Contains("inbox/other.yaml:2:1: warning CR1005", run.Error, StringComparison.Ordinal);
        Assert.True(_shop.Has("inbox/bad.yaml") && _shop.Has("inbox/other.yaml"));
        var check = _shop.Run("check");
        Assert.Equal(0, check.ExitCode);
        Assert.Contains("inbox/bad.yaml:6:8: warning CR1002", check.Output, StringComparison.Ordinal);
        Assert.Contains("inbox/other.yaml:2:1: warning CR1005: '2026-11-25-ferry-lane-aaaa' is on record already", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_looks_and_moves_nothing()
    {
        _shop.Write("inbox/a.yaml", Finding);
        var before = _shop.Files;
        Assert.Equal(0, _shop.Run("check").ExitCode);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void A_folder_that_cannot_be_changed_is_built_all_the_same()
    {
        _shop.Write("inbox/a.yaml", Finding);
        // A file where the tool keeps its own things stops it from writing, whatever rights the tests run with.
        _shop.Write(".crossref", "");
        var before = _shop.Files;
        var run = _shop.Run("build");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("The inbox was left as it is.", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Files);
        Assert.True(File.Exists(Path.Combine(_shop.Content, "..", "site", "index.html")));
    }

    [Fact]
    public void Hostile_files_are_refused_and_nothing_outside_is_touched()
    {
        var outside = Path.Combine(_shop.Content, "..", "outside.yaml");
        File.WriteAllText(outside, Finding);
        _shop.Write("inbox/1-nul.yaml", "claim: x\0y\n");
        _shop.Write("inbox/2-latin.yaml", "claim: "u8.ToArray().Append((byte)0xFF).ToArray());
        _shop.Write("inbox/3-deep.yaml", "claim: " + new string('[', 200));
        _shop.Write("inbox/4-path.yaml", Finding.Replace(Id, "../../../escape", StringComparison.Ordinal));
        _shop.Write("inbox/5-device.yaml", Finding.Replace(Id, "nul", StringComparison.Ordinal));
        _shop.Write("inbox/6-alias.yaml", "claim: &a x\npart: *a\n");
        _shop.Write("inbox/7-library.yaml", "library: ferry-lane\ntitle: Mine now\n");
        File.CreateSymbolicLink(Path.Combine(_shop.Content, "inbox", "8-link.yaml"), outside);
        _shop.Write("inbox/9-case.yaml", Finding.Replace("aaaa", "AAAA", StringComparison.Ordinal));
        using (var large = File.Create(Path.Combine(_shop.Content, "inbox", "91-large.yaml"))) large.SetLength(1L << 30);
        _shop.Write("inbox/92-right.yaml", Finding);
        var (before, inbox) = (Directory.GetFiles(Path.Combine(_shop.Content, "..")), Directory.GetFiles(Path.Combine(_shop.Content, "inbox")));
        var run = _shop.Run("build", "--json");
        Assert.Equal([Id], run.Json["takenIn"]!.AsArray().Select(i => (string)i!));
        Assert.Equal(inbox.Where(f => !f.EndsWith("92-right.yaml", StringComparison.Ordinal)).Order(), Directory.GetFiles(Path.Combine(_shop.Content, "inbox")).Order());
        Assert.All(inbox.Select(f => Path.GetFileName(f)).Where(f => f != "92-right.yaml"), f => Assert.Contains("inbox/" + f, run.Error, StringComparison.Ordinal));
        Assert.Equal(before, Directory.GetFiles(Path.Combine(_shop.Content, "..")));
        Assert.Equal(Finding, File.ReadAllText(outside));
    }
}

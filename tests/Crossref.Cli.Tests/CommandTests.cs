namespace Crossref.Cli.Tests;

/// <summary>The real executable with what people give it: sound folders, missing ones, foreign ones, mistyped names.</summary>
public sealed class CommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("cli").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Build_writes_the_site_and_says_what_to_open()
    {
        var site = Path.Combine(_folder, "site");
        var run = Tool.OnDemo("build", "--out", site);
        Assert.Equal("", run.Error);
        Assert.Equal(0, run.ExitCode);
        Assert.True(File.Exists(Path.Combine(site, "index.html")));
        Assert.Contains(Path.Combine(site, "index.html"), run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_tells_programs_what_it_did()
    {
        var site = Path.Combine(_folder, "site");
        var json = Tool.OnDemo("build", "--out", site, "--json").Json;
        Assert.True((int)json["files"]! > 100);
        Assert.Equal((int)json["files"]!, (int)json["written"]!);
        Assert.Equal(0, (int)Tool.OnDemo("build", "--out", site, "--json").Json["written"]!);
    }

    [Fact]
    public void Build_refuses_a_folder_that_holds_something_else()
    {
        File.WriteAllText(Path.Combine(_folder, "taxes.txt"), "mine");
        var run = Tool.OnDemo("build", "--out", _folder);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("taxes.txt", run.Error, StringComparison.Ordinal);
        Assert.Equal(["taxes.txt"], Directory.EnumerateFileSystemEntries(_folder).Select(Path.GetFileName));
    }

    [Fact]
    public void Build_says_when_it_may_not_write()
    {
        // A path below a file cannot be made by anybody, whatever their rights.
        var file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "");
        var run = Tool.OnDemo("build", "--out", Path.Combine(file, "site"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("could not be written", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_writes_nothing_when_a_record_is_wrong()
    {
        WriteContent("part: x\nkind: bearng\nname: X\n");
        var run = Tool.Run(_folder, "build");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("records.yaml:2:7", run.Error, StringComparison.Ordinal);
        Assert.Contains("bearing", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "site")));
    }

    [Theory]
    [InlineData("build")]
    [InlineData("pack", "stick")]
    [InlineData("export")]
    [InlineData("find", "x")]
    [InlineData("record", "--withdraws", "x")]
    public void What_has_to_be_mended_first_is_in_the_JSON_as_check_prints_it(params string[] arguments)
    {
        WriteContent("part: x\nkind: bearng\nname: X\n");
        var (words, run) = (Tool.Run(_folder, arguments), Tool.Run(_folder, [.. arguments, "--json"]));
        Assert.Equal((1, "", words.Error), (run.ExitCode, words.Output, run.Error));
        Assert.Equal(Tool.Run(_folder, "check", "--json").Output, run.Output);
    }

    [Fact]
    public void A_shop_may_bring_its_own_template()
    {
        var template = Directory.CreateDirectory(Path.Combine(_folder, "mine")).FullName;
        File.WriteAllText(Path.Combine(template, "crossref.css"), "/* our own */");
        var site = Path.Combine(_folder, "site");
        Assert.Equal(0, Tool.OnDemo("build", "--out", site, "--template", template).ExitCode);
        Assert.Contains(Directory.GetFiles(site, "*.css", SearchOption.AllDirectories), f => File.ReadAllText(f) == "/* our own */");
    }

    [Theory]
    [InlineData("check")]
    [InlineData("build")]
    [InlineData("fits", "a/b/c")]
    [InlineData("where", "x")]
    [InlineData("find", "x")]
    public void A_missing_or_empty_folder_is_said_in_words(params string[] arguments)
    {
        var missing = Tool.Run(_folder, arguments);
        Assert.Equal((2, ""), (missing.ExitCode, missing.Output));
        Assert.Contains("There is no folder", missing.Error, StringComparison.Ordinal);
        Directory.CreateDirectory(Path.Combine(_folder, "content"));
        var empty = Tool.Run(_folder, arguments);
        Assert.Equal((2, ""), (empty.ExitCode, empty.Output));
        Assert.Contains("holds no records", empty.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_to_look_up_is_said_in_words()
    {
        var run = Tool.OnDemo("find", " ");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("Nothing to look up", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_finds_nothing_wrong_with_the_demo()
    {
        var run = Tool.OnDemo("check", "--json");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal((0, 0), ((int)run.Json["errors"]!, (int)run.Json["warnings"]!));
        Assert.Equal("", run.Error);
    }

    [Fact]
    public void Check_prints_every_finding_at_once_for_programs()
    {
        WriteContent("part: x\nkind: bearng\nname: X\ncolour: red\n");
        var run = Tool.Run(_folder, "check", "--json");
        Assert.Equal(1, run.ExitCode);
        Assert.Equal(2, (int)run.Json["errors"]!);
        var first = run.Json["diagnostics"]![0]!;
        Assert.Equal("records.yaml", (string)first["file"]!);
        Assert.Equal((2, 7, "error"), ((int)first["line"]!, (int)first["column"]!, (string)first["severity"]!));
        Assert.Equal(["code", "severity", "file", "line", "column", "message", "hint"], first.AsObject().Select(p => p.Key));
    }

    [Fact]
    public void Fits_answers_with_the_path_of_evidence()
    {
        var json = Tool.OnDemo("fits", "ostrin-f2/fold-head/roller-2-bearing-rear", "--machine", "folder-1", "--json").Json;
        Assert.Equal(["position", "machine", "safety", "candidates", "disputed", "ruledOut"], json.AsObject().Select(p => p.Key));
        var best = json["candidates"]![0]!;
        Assert.Equal(["part", "standing", "accepted", "reason", "steps", "conditions", "changes", "cautions", "inHouse"], best.AsObject().Select(p => p.Key));
        Assert.Equal("brg-os-1203", (string)best["part"]!);
        Assert.Equal("documented", (string)best["standing"]!);
        Assert.Equal(["kind", "from", "to", "standing", "claims", "source", "locator"], best["steps"]![0]!.AsObject().Select(p => p.Key));
        Assert.Contains(json["candidates"]!.AsArray(), c => (string)c!["part"]! == "brg-vm-0907" && c["inHouse"]!.AsArray().Any(i => (string?)i!["bag"] == "b-2025-120"));
    }

    [Fact]
    public void Fits_all_answers_every_position_without_a_machine_and_for_each_machine()
    {
        var answers = Tool.OnDemo("fits", "--all", "--json").Json.AsArray();
        Assert.Equal(answers.Count, answers.Select(a => $"{a!["position"]} {a["machine"]}").Distinct().Count());
        Assert.Contains(answers, a => a!["machine"] is null && (string)a["position"]! == "ostrin-f2/fold-head/roller-1");
        Assert.Contains(answers, a => (string?)a!["machine"] == "folder-2" && (string)a["position"]! == "ostrin-f2/fold-head/roller-1");
    }

    [Theory]
    [InlineData("fits", "ostrin-f2/fold-head/roller-2-bearing-raer", "Did you mean ostrin-f2/fold-head/roller-2-bearing-rear?")]
    [InlineData("fits", "ostrin-f2/fold-head/roller-1", "--machine", "folder-11", "Did you mean folder-1?")]
    [InlineData("fits", "ostrin-f2/fold-head/roller-1", "--machine", "press-1", "the position is of ostrin-f2")]
    [InlineData("fits", "Name one position")]
    [InlineData("where", "brg-os-1204x", "There is no part")]
    [InlineData("fits", "roller-2-bearing-raer", "Did you mean roller-2-bearing-rear?")]
    [InlineData("fits", "heat-roller-bearing-rear", "Name one of them: ")]
    [InlineData("where", "vm-097", "Did you mean VM-0907?")]
    [InlineData("chek", "Did you mean check?")]
    [InlineData("check", "--jsn", "Did you mean --json?")]
    [InlineData("check", "--date", "2026-02-31", "is not a date")]
    public void A_name_that_is_not_on_record_is_refused_with_a_remedy(params string[] argumentsAndText)
    {
        var arguments = argumentsAndText[..^1].ToList();
        var withDate = arguments.Contains("--date");
        var run = withDate ? Tool.Run(_folder, [.. arguments, "--content", Tool.Demo]) : Tool.OnDemo([.. arguments]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(argumentsAndText[^1], run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("roller-2-bearing-rear")]
    [InlineData("fold-head/roller-2-bearing-rear")]
    public void A_position_may_be_named_by_its_ending(string ending) =>
        Assert.Equal("ostrin-f2/fold-head/roller-2-bearing-rear", (string)Tool.OnDemo("fits", ending, "--json").Json["position"]!);

    [Fact]
    public void Where_takes_a_number_as_people_type_it()
    {
        var json = Tool.OnDemo("where", "vm 0907", "--json").Json;
        Assert.Equal("brg-vm-0907", (string)json["part"]!);
        Assert.Contains(json["fits"]!.AsArray(), f => (string)f!["position"]! == "ostrin-f2/fold-head/roller-1-bearing-rear" && (string)f["standing"]! == "proven");
        Assert.Contains(json["standsInFor"]!.AsArray(), s => (string)s!["insteadOf"]! == "brg-os-1203" && (string)s["relation"]! == "interchangeable");
    }

    [Fact]
    public void Find_says_why_each_hit_matched()
    {
        var json = Tool.OnDemo("find", "OS-1203-01", "--json").Json;
        Assert.Equal("OS-1203-01", (string)json["query"]!);
        var first = json["results"]![0]!;
        Assert.Equal(["type", "id", "title", "why", "score", "page"], first.AsObject().Select(p => p.Key));
        Assert.Equal("brg-os-1203", (string)first["id"]!);
        Assert.Contains("earlier number", (string)first["why"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("6001", "substitute", "Ran 20,000 sheets")]
    [InlineData("6003", "ruled out", "Does not fit, whatever anyone claims: bore 17 mm, where 12 mm belongs (A-1).")]
    public void A_bore_that_differs_stands_in_for_nothing_whatever_is_claimed(string standard, string relation, string reason)
    {
        WriteContent($$"""
            part: a
            kind: bearing
            name: Bearing A
            maker: Ostrin
            numbers: [A-1]
            standard: 6001
            ---
            part: b
            kind: bearing
            name: Bearing B
            maker: Ostrin
            numbers: [B-1]
            standard: {{standard}}
            ---
            source: log
            type: repair
            title: Log
            ---
            claim: b-for-a
            part: b
            replaces: a
            verdict: fits
            basis: ran
            sheets: 20000
            source: log
            by: M. Orr
            date: 2026-02-11
            """);
        var standIn = Assert.Single(Tool.Run(_folder, "where", "a", "--json").Json["standIns"]!.AsArray())!;
        Assert.Equal(relation, (string)standIn["relation"]!);
        Assert.StartsWith(reason, (string)standIn["reason"]!, StringComparison.Ordinal);
        Assert.Equal(relation == "substitute" ? "ran" : null, (string?)standIn["standing"]);
        Assert.Contains(relation == "substitute" ? "May stand in for it" : "Disputed or ruled out in its place", Tool.Run(_folder, "where", "a").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("build", "opens by double-click")]
    [InlineData("check", "what is wrong")]
    [InlineData("fits", "family/assembly/position")]
    [InlineData("where", "stand in for it")]
    [InlineData("find", "piece of one")]
    public void Help_speaks_plainly(string command, string words)
    {
        var run = Tool.Run(_folder, command, "--help");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains(words, run.Output, StringComparison.Ordinal);
        Assert.Contains("--content", run.Output, StringComparison.Ordinal);
    }

    private void WriteContent(string records)
    {
        var content = Directory.CreateDirectory(Path.Combine(_folder, "content")).FullName;
        File.WriteAllText(Path.Combine(content, "library.yaml"), "library: shop\ntitle: A shop\n");
        File.WriteAllText(Path.Combine(content, "records.yaml"), records);
    }
}

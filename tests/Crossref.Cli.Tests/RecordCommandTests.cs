using System.Text.Json.Nodes;

namespace Crossref.Cli.Tests;

/// <summary>A finding recorded by flags and by questions, in a copy of the demo library.</summary>
public sealed class RecordCommandTests : IDisposable
{
    private static readonly string[] Finding =
    [
        "record", "--machine", "folder-1", "--at", "roller-2-bearing-front", "--part", "vm 0907", "--verdict", "fits",
        "--basis", "seated", "--source", "workshop-log", "--by", "M. Orr",
    ];

    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void A_finding_is_one_new_file_and_the_standing_rises()
    {
        var before = _shop.Files;
        var json = _shop.Run([.. Finding, "--json"]).Json;
        Assert.Equal(["id", "file", "text", "written", "also", "before", "after", "diagnostics"], json.AsObject().Select(p => p.Key));
        var file = (string)json["file"]!;
        Assert.Equal($"claims/{(string)json["id"]!}.yaml", file);
        Assert.Equal((string)json["text"]!, _shop.Read(file));
        Assert.Equal(before.Append(new(file, (string)json["text"]!)).OrderBy(p => p.Key, StringComparer.Ordinal), _shop.Files);
        Assert.Equal(("measured", false), Standing(json["before"]!));
        Assert.Equal(("seated", true), Standing(json["after"]!));
        var fits = _shop.Run("fits", "ostrin-f2/fold-head/roller-2-bearing-front", "--machine", "folder-1", "--json").Json["candidates"]!.AsArray();
        Assert.Contains(fits, c => (string)c!["part"]! == "brg-vm-0907" && (string)c["standing"]! == "seated");
        Assert.Equal(0, (int)_shop.Run("check", "--json").Json["errors"]!);
    }

    [Fact]
    public void The_screen_says_how_the_standing_changes_and_where_it_is_written()
    {
        var run = _shop.Run(Finding);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("VM-0907 (brg-vm-0907) at ostrin-f2/fold-head/roller-2-bearing-front in folder-1: measured, not an answer → seated, accepted", run.Output, StringComparison.Ordinal);
        Assert.Contains("Written: claims/2026-11-25-ferry-lane-", run.Output, StringComparison.Ordinal);
        Assert.Contains("is on record already", _shop.Run(Finding).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dry_run_shows_the_text_and_writes_nothing()
    {
        var before = _shop.Files;
        var run = _shop.Run([.. Finding, "--dry-run"]);
        Assert.Contains("    basis: seated\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", run.Output, StringComparison.Ordinal);
        Assert.False((bool)_shop.Run([.. Finding, "--dry-run", "--json"]).Json["written"]!);
        Assert.Equal(before, _shop.Files);
        Assert.False(Directory.Exists(Path.Combine(_shop.Content, ".crossref")));
    }

    [Fact]
    public void A_run_on_a_safety_part_does_not_become_a_fit()
    {
        var run = _shop.Run("record", "--machine", "press-1", "--at", "lamp-edge", "--part", "lmp-ta-4262", "--verdict", "fits", "--basis", "ran", "--sheets", "900000", "--source", "workshop-log", "--json");
        Assert.Equal(0, run.ExitCode);
        Assert.False((bool)run.Json["after"]![0]!["accepted"]!);
        Assert.Contains("A safety part", _shop.Run("record", "--at", "tarrock-t40/fixing/lamp-edge", "--part", "lmp-ta-4262", "--verdict", "fits", "--basis", "seated", "--source", "workshop-log").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "did you mean 'fits'?", "--verdict", "fit")]
    [InlineData(1, "there is no source or repair 'nobody'", "--source", "nobody")]
    [InlineData(1, "it is reached", "--basis", "proven")]
    [InlineData(2, "There is no part vm 9999", "--part", "vm 9999")]
    [InlineData(2, "Did you mean roller-2-bearing-front?", "--at", "roller-2-bearing-frnt")]
    [InlineData(2, "--sheets or --cycles or --hours missing", "--basis", "ran")]
    [InlineData(2, "--change missing", "--verdict", "fits-with-change")]
    [InlineData(1, "a control character (U+0007)", "--note", "a\u0007b")]
    [InlineData(1, "is about brg-vm-0907 at ostrin-f2/fold-head/roller-1-bearing-rear", "--withdraws", "2024-09-02-ferry-lane-p1q4")]
    public void What_is_wrong_is_said_and_nothing_is_written(int exitCode, string text, string flag, string value)
    {
        var before = _shop.Files;
        var arguments = Finding.ToList();
        if (arguments.IndexOf(flag) is var at and >= 0) arguments[at + 1] = value;
        else arguments.AddRange([flag, value]);
        var run = _shop.Run([.. arguments]);
        Assert.Equal((exitCode, ""), (run.ExitCode, run.Output));
        Assert.Contains(text, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void A_refused_finding_says_why_in_JSON_too()
    {
        string[] wrong = ["record", "--at", "ostrin-f2/fold-head/roller-1", "--part", "rol-os-1100", "--verdict", "fit", "--basis", "told"];
        var (words, run) = (_shop.Run(wrong), _shop.Run([.. wrong, "--json"]));
        Assert.Equal((1, words.Error), (run.ExitCode, run.Error));
        Assert.Equal(["errors", "warnings", "diagnostics"], run.Json.AsObject().Select(p => p.Key));
        Assert.Equal((1, 1), ((int)run.Json["errors"]!, run.Json["diagnostics"]!.AsArray().Count));
        Assert.Equal("did you mean 'fits'?", (string)run.Json["diagnostics"]![0]!["hint"]!);
    }

    [Fact]
    public void A_claim_is_taken_back_by_its_id_alone()
    {
        var first = (string)_shop.Run([.. Finding, "--json"]).Json["id"]!;
        var text = (string)_shop.Run("record", "--withdraws", first, "--json").Json["text"]!;
        Assert.Contains("\npart: brg-vm-0907\nat: ostrin-f2/fold-head/roller-2-bearing-front\ndate: 2026-11-25\n", text, StringComparison.Ordinal);
        Assert.Equal(0, (int)_shop.Run("check", "--json").Json["errors"]!);
    }

    [Fact]
    public void What_was_taken_back_is_complained_of_no_longer()
    {
        static int Warnings(ToolRun run) => (int)run.Json["warnings"]!;
        var before = Warnings(_shop.Run("check", "--json"));
        // A bearing among the gears, without a source, and its bore is another.
        var slip = (string)_shop.Run("record", "--machine", "creaser-1", "--at", "drive-gear", "--part", "VM-0907", "--verdict", "fits", "--basis", "seated", "--json").Json["id"]!;
        Assert.Equal(before + 3, Warnings(_shop.Run("check", "--json")));
        var run = _shop.Run("record", "--withdraws", slip);
        Assert.Contains("ruled out, not an answer → nothing recorded", run.Output, StringComparison.Ordinal);
        Assert.Equal((0, "", before), (run.ExitCode, run.Error, Warnings(_shop.Run("check", "--json"))));
    }

    [Fact]
    public void What_a_repair_fitted_is_taken_back_by_its_id_alone()
    {
        var json = _shop.Run("record", "--withdraws", "repair-2026-014/roller-2-bearing-rear", "--json").Json;
        Assert.Contains("\npart: brg-vm-0907\nat: ostrin-f2/fold-head/roller-2-bearing-rear\n", (string)json["text"]!, StringComparison.Ordinal);
        Assert.Equal((("proven", true), ("ran", true)), (Standing(json["before"]!), Standing(json["after"]!)));
    }

    [Theory]
    [InlineData("nothing", "There is no claim nothing.")]
    [InlineData("2024-09-02-ferry-lane-p1q5", "Did you mean 2024-09-02-ferry-lane-p1q4?")]
    [InlineData("repair-2026-014/roller-9", "There is no claim repair-2026-014/roller-9.")]
    public void Only_what_is_there_is_taken_back(string id, string text)
    {
        var run = _shop.Run("record", "--withdraws", id);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(text, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_keyboard_it_says_which_flags_are_missing()
    {
        var run = _shop.RunTyping("", "record");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("--part, --at or --replaces, --verdict, --basis missing", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_crossref_at_work_is_said_and_nothing_is_written()
    {
        _shop.Run("record", "--at", "ostrin-f2/fold-head/roller-1", "--part", "rol-os-1100", "--verdict", "fits", "--basis", "told");
        var before = _shop.Files;
        using var held = new FileStream(Path.Combine(_shop.Content, ".crossref", "lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        var run = _shop.Run(Finding);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Another Crossref is at work", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void Questions_lead_to_the_same_record_as_flags()
    {
        var flags = _shop.Run([.. Finding, "--dry-run", "--json"]).Json;
        // Folder 1; a piece of the position, then the first of those that are left; the number of the part; three times Enter; who.
        var run = _shop.RunTyping("folder-1\nfront\n2\nVM-0907\n\n\nworkshop-log\nM. Orr\nyes\n", "record", "--ask", "--json");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal((string)flags["text"]!, (string)run.Json["text"]!);
        Assert.Equal((string)flags["text"]!, _shop.Read((string)flags["file"]!));
        Assert.Contains("roller-1-bearing-front", run.Error, StringComparison.Ordinal);
        Assert.Matches("brg-vm-0907 +VM-0907", run.Error);
        Assert.Contains("measured, not an answer → seated, accepted", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_asks_for_its_count_and_a_change_for_its_words()
    {
        var run = _shop.RunTyping("creaser-1\nroller-bearing-rear\nbrg-ta-4120\nfits-with-change\nring behind it\nran\nmany\n16,000\n\n\ny\n", "record", "--ask", "--json");
        Assert.Contains("'many' is not a count.", run.Error, StringComparison.Ordinal);
        Assert.Contains("basis: ran\ncycles: 16000\nchange: ring behind it\n", (string)run.Json["text"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")] // the end of the input at once
    [InlineData("\n")] // an empty line at the first question
    [InlineData("folder-1\n\n\n")] // back, and out
    [InlineData("folder-1\nroller-2-bearing-front\n1\n\n\n\n\n")] // the end of the input at the last question
    [InlineData("folder-1\nroller-2-bearing-front\n1\n\n\n\n\nno\n")]
    public void Going_out_changes_nothing(string typed)
    {
        var before = _shop.Files;
        var run = _shop.RunTyping(typed, "record", "--ask");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("Nothing was recorded.", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void Back_asks_the_question_before_again()
    {
        var run = _shop.RunTyping("folder-1\n\ncreaser-1\ndrive-gear\n", "record", "--ask");
        Assert.Equal(2, run.Error.Split("Which machine was it tried in?").Length - 1);
        Assert.Contains("gear-os-0610", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_word_back_takes_an_answer_back_where_Enter_takes_another()
    {
        var flags = _shop.Run([.. Finding, "--dry-run", "--json"]).Json;
        var run = _shop.AtKeyboard(["folder-1", "roller-2-bearing-front", "VM-0907", "does-not-fit", "told", "back", "back", "", "", "workshop-log", "", "back", "", "yes"], ["record", "--json"]);
        Assert.Equal((string)flags["text"]!, (string)run.Json["text"]!);
    }

    [Fact]
    public void Only_machines_of_this_shop_are_offered()
    {
        _shop.Write("from/mill/library.yaml", "library: mill\ntitle: The Mill\n");
        _shop.Write("from/mill/machines.yaml", "machine: mill-folder\nfamily: ostrin-f2\n");
        Assert.Contains("mill:mill-folder", _shop.Run("find", "mill-folder", "--json").Output, StringComparison.Ordinal);
        var said = _shop.AtKeyboard([], ["record"]).Error;
        Assert.Contains("folder-1", said, StringComparison.Ordinal);
        Assert.DoesNotContain("mill-folder", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_counter_that_only_a_repair_read_says_what_a_machine_counts()
    {
        _shop.Write("shop/new.yaml", "machine: creaser-2\nfamily: ostrin-k1\n---\nrepair: first\nmachine: creaser-2\ndate: 2026-11-02\ncycles: 900\nnote: Cleaned.\n");
        Assert.Contains("How many cycles did it run?", _shop.AtKeyboard(["creaser-2", "drive-gear", "1", "", "ran"], ["record"]).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("orr", "M. Orr")]
    [InlineData("r. finch", "R. Finch")]
    [InlineData("Dorr", "Dorr")]
    public void Who_is_known_is_known_by_the_last_name(string typed, string by)
    {
        var run = _shop.AtKeyboard(["folder-1", "roller-2-bearing-front", "VM-0907", "", "", "", typed, "yes"], ["record", "--json"]);
        Assert.Contains($"\nby: {by}\n", (string)run.Json["text"]!, StringComparison.Ordinal);
    }

    private static (string, bool) Standing(JsonNode standings) => ((string)standings[0]!["standing"]!, (bool)standings[0]!["accepted"]!);
}

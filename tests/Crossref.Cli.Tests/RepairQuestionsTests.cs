using System.Text.Json.Nodes;

namespace Crossref.Cli.Tests;

/// <summary>The questions of a whole repair, in a copy of the demo library.</summary>
public sealed class RepairQuestionsTests : IDisposable
{
    private static readonly string[] Repair = ["record", "repair"];
    private static readonly string[] Kinds = ["--unit", "--machine", "--found", "--removed", "--fitted", "--swapped", "--note"];

    private readonly Shop _shop = new();

    public static TheoryData<string> Names => [.. TypedRepairs.All.Keys];

    public void Dispose() => _shop.Dispose();

    [Theory]
    [MemberData(nameof(Names))]
    public void Questions_lead_to_the_same_records_as_flags(string name)
    {
        var (typed, flags) = TypedRepairs.All[name];
        var before = _shop.Files;
        var byFlags = _shop.Run([.. Repair, .. flags, "--dry-run", "--json"]);
        Assert.True(byFlags.ExitCode == 0, byFlags.Error);
        var wanted = byFlags.Json;
        var run = _shop.AtKeyboard([.. typed, "yes"], [.. Repair, "--json"]);
        Assert.True(run.ExitCode == 0, run.Error);
        Assert.Equal(Records(wanted), Records(run.Json));
        Assert.Equal(Records(wanted), _shop.Files.Where(f => !before.ContainsKey(f.Key)).Select(f => (f.Key, f.Value)).OrderBy(f => f.Key, StringComparer.Ordinal));
        Assert.Equal(0, (int)_shop.Run("check", "--json").Json["errors"]!);
    }

    [Fact]
    public void What_is_known_is_offered()
    {
        var said = Ask(["folder-1", "-", "squeal", "fold-head", "roller-2-bearing-rear", "seized", "", ""]);
        Assert.Contains("Last known: 1,303,300 sheets on 2026-11-20.", said, StringComparison.Ordinal);
        Assert.Matches("1  fold-head  +Fold head\n", said); // the symptom's first suspect is in there
        Assert.Matches("roller-2-bearing-rear  +Second fold roller bearing, rear side — VM-0907 since 2026-02-11\n", said);
        Assert.Matches("roller-1-bearing-rear  +First fold roller bearing, rear side — listed OS-1203-02\n", said);
        Assert.Matches("VM-0907 from bag b-2025-120  +2 new-sealed, B4 — proven\n", said);
        Assert.EndsWith("Nothing was recorded.\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_in_a_place_follows_from_repairs_swaps_and_what_was_taken_out()
    {
        Assert.Matches("lamp-edge  +Heater lamp, edges — listed TI6-1162.01\\n", Ask(["press-2", "-", "-", "fixing"]));
        Assert.Equal(0, _shop.Run([.. Repair, "--machine", "press-2", "--swapped", "fixing,out=fixing-60-b,in=fixing-60-a"]).ExitCode);
        Assert.Matches("lamp-edge  +Heater lamp, edges — TI6-1162.01 since 2026-05-20\\n", Ask(["press-2", "-", "-", "fixing"])); // done on the bench
        var donor = Ask(["fixing-40-donor", "-"]);
        Assert.Matches("web  +Cleaning web — empty\\n", donor); // its own record calls it missing
        Assert.Matches("lamp-main  +Heater lamp, centre — empty\\n", donor); // taken out into a bag
        Assert.Matches("roller-2-gear  +Second fold roller gear — empty\\n", Ask(["spare-fold-head", "-"])); // lent to a folder
    }

    [Fact]
    public void What_a_piece_of_a_unit_costs_and_what_one_bag_has_left_is_said()
    {
        var said = Ask(["folder-1", "-", "-", "fold-head", "roller-1-bearing-front", "-", "", "", "VM-0907", "b-2025-120", "roller-1-bearing-rear", "-", "", "", ""]);
        Assert.Matches("from unit spare-fold-head  +rack 2, then owed back — documented", said);
        Assert.Matches("from bag b-2025-120  +2 new-sealed", said);
        Assert.Matches("from bag b-2025-120  +1 new-sealed", said);
    }

    [Fact]
    public void A_counter_that_runs_backwards_is_asked_again_unless_it_was_set_anew()
    {
        var run = _shop.AtKeyboard(["folder-1", "130400", "99999999999999999999999999999999999", "1304000", "-", "-", "", "", "", ""], [.. Repair, "--json"]);
        Assert.Contains("That is less than the 1,303,300 sheets of 2026-11-20. Read it again.", run.Error, StringComparison.Ordinal);
        Assert.Contains("\nsheets: 1304000\n", (string)run.Json["text"]!, StringComparison.Ordinal);

        _shop.Write("shop/new-counter.yaml", "machine: folder-9\nfamily: ostrin-f2\nreadings: [{date: 2026-10-01, sheets: 900000}, {date: 2026-11-01, sheets: 40, reset: true}]\n");
        Assert.Contains("\nsheets: 130400\n", (string)_shop.AtKeyboard(["folder-9", "130400", "-", "-", "", "", "", ""], [.. Repair, "--json"]).Json["text"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_safety_part_without_the_makers_document_is_said_and_not_forbidden()
    {
        const string Plainly = "A safety part: only what the maker's own document names for this machine counts as a fit. It does not name TI6-1162.01 here.";
        string[] lamp = ["press-1", "-", "-", "fixing", "lamp-edge", "broken", "", ""];
        var said = Ask([.. lamp, "TI6-1162.01", "b-2026-018", "", ""]);
        Assert.Contains(Plainly, said, StringComparison.Ordinal);
        Assert.DoesNotContain(Plainly, Ask([.. lamp, "TO4-1131.01", "new", "", ""]), StringComparison.Ordinal);
        var run = _shop.AtKeyboard([.. lamp, "TI6-1162.01", "b-2026-018", "", "", "", "", "", "yes"], [.. Repair, "--json"]);
        Assert.Equal(0, run.ExitCode);
        Assert.False((bool)run.Json["after"]![0]!["accepted"]!);
        Assert.True(run.Error.LastIndexOf("only what the maker's own document names", StringComparison.Ordinal) < run.Error.IndexOf("Write it down?", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sample_is_no_offer()
    {
        var said = Ask(["press-3", "-", "-", "fixing", "lamp-main", "broken", "", "", "TO4-1135.01"]);
        Assert.Matches("TO4-1135.01 new  +bought — documented", said);
        Assert.DoesNotContain("TO4-1135.01 from bag b-2025-140", said, StringComparison.Ordinal);
        Assert.Matches("bag b-2025-140  +1 sample, S1", said); // who names the part is shown every piece of it
    }

    [Fact]
    public void What_a_flag_gives_is_not_asked()
    {
        string[] flags = ["--machine", "press-1", "--sheets", "1280000", "--symptom", "squeal", "--assembly", "fixing", "--by", "R. Finch", "--outcome", "waiting", "--note", "x"];
        var wanted = _shop.Run([.. Repair, .. flags, "--found", "claw=dirty", "--found", "web=ok", "--dry-run", "--json"]).Json;
        var asked = _shop.AtKeyboard(["web", "ok", "", "", "yes"], [.. Repair, .. flags, "--found", "claw=dirty", "--ask", "--json"]);
        Assert.Equal(Records(wanted), Records(asked.Json));
        Assert.Equal(["Another place?", "Cleaning web: what was found? More words behind a comma.", "Where did the old part go?", "Another place?", "Write it down?"], asked.Error.Split('\n').Where(l => l.Contains('?', StringComparison.Ordinal)));
    }

    [Fact]
    public void Flags_that_say_it_all_ask_nothing()
    {
        var run = _shop.AtKeyboard([], [.. Repair, "--machine", "press-1", "--found", "fixing/claw=dirty"]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("Written: repairs/", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "there is no symptom 'squeel'", "--machine", "folder-1", "--symptom", "squeel")]
    [InlineData(1, "there is no machine 'folder-9'", "--machine", "folder-9")]
    [InlineData(2, "Did you mean from?", "--fitted", "roller-2-bearing-front=VM-0907,form=b-2025-120")]
    public void What_is_wrong_in_a_flag_is_said_before_anything_is_asked(int exitCode, string text, params string[] flags)
    {
        var run = _shop.AtKeyboard(["folder-1"], [.. Repair, .. flags]);
        Assert.Equal((exitCode, ""), (run.ExitCode, run.Output));
        Assert.Contains(text, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Enter takes what stands in brackets", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_repair_that_cannot_stand_is_asked_again_and_not_lost()
    {
        var run = _shop.AtKeyboard(["creaser-1", "-", "-", "-", "", "", "a\u0007b", "gone by ten", "yes"], [.. Repair, "--json"]);
        Assert.Contains("a control character (U+0007)", run.Error, StringComparison.Ordinal);
        Assert.Contains("note: gone by ten\n", (string)run.Json["text"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData()] // the end of the input at once
    [InlineData("")] // an empty line at the first question
    [InlineData("folder-1", "back", "back")]
    [InlineData("folder-1", "-", "squeal", "fold-head", "roller-1", "worn", "", "")] // the end in the middle of a place
    [InlineData("creaser-1", "-", "-", "-", "", "", "", "no")]
    public void Going_out_changes_nothing(params string[] typed)
    {
        var before = _shop.Files;
        Assert.EndsWith("Nothing was recorded.\n", Ask(typed), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void Without_a_keyboard_it_says_what_is_missing()
    {
        var run = _shop.RunTyping("folder-1\n", Repair);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("--machine or --unit missing", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Whatever_is_answered_and_taken_back_the_flags_of_the_record_give_it_again()
    {
        var (recorded, backs, kinds) = (0, 0, new HashSet<string>());
        var random = new Random(14);
        for (var round = 1; round <= 30; round++)
        {
            using var shop = new Shop();
            using var screen = new StringWriter();
            using var wanderer = new Wanderer(random, screen);
            var run = shop.AtKeyboard(wanderer, screen, [.. Repair, "--json"]);
            if (run.ExitCode == 2) continue; // it went out
            Assert.True(run.ExitCode == 0, $"{round}: {run.Error}");
            (recorded, backs) = (recorded + 1, backs + wanderer.Backs);
            var flags = RepairFlags.Of(run.Json);
            kinds.UnionWith(flags.Where(f => f.StartsWith("--", StringComparison.Ordinal)));
            var again = _shop.Run([.. Repair, .. flags, "--dry-run", "--json"]);
            Assert.True(again.ExitCode == 0, $"{round}: {string.Join(' ', flags)} {again.Error}");
            Assert.Equal(Records(run.Json), Records(again.Json));
        }
        Assert.InRange(recorded, 25, 30);
        Assert.InRange(backs, 100, int.MaxValue);
        Assert.Empty(Kinds.Except(kinds));
    }

    private string Ask(string[] typed)
    {
        var run = _shop.AtKeyboard(typed, Repair);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        return run.Error.ReplaceLineEndings("\n");
    }

    private static IEnumerable<(string, string)> Records(JsonNode json) =>
        json["also"]!.AsArray().Append(json).Select(r => ((string)r!["file"]!, (string)r["text"]!)).OrderBy(r => r.Item1, StringComparer.Ordinal);
}

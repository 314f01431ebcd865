namespace Crossref.Cli.Tests;

/// <summary>A whole repair, and a look at the machine some weeks later.</summary>
public sealed class RecordRepairTests : IDisposable
{
    private const string Front = "ostrin-f2/fold-head/roller-2-bearing-front";

    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void A_repair_takes_from_a_bag_and_fills_a_new_one()
    {
        var before = _shop.Files;
        var json = Repair("--json").Json;
        var (repair, bag) = ((string)json["file"]!, (string)json["also"]![0]!["file"]!);
        Assert.Equal([repair, bag], _shop.Files.Keys.Except(before.Keys));
        var bagId = (string)json["also"]![0]!["id"]!;
        Assert.Equal($"""
            repair: {(string)json["id"]!}
            machine: folder-1
            date: 2026-11-25
            by: M. Orr
            sheets: 1304000
            symptom: squeal
            assembly: fold-head
            found:
              - {"{"}position: roller-2-bearing-front, condition: dry, note: "a, trace: of rust"{"}"}
            removed:
              - {"{"}position: roller-2-bearing-front, part: brg-os-1303, to: {bagId}{"}"}
            fitted:
              - {"{"}position: roller-2-bearing-front, part: brg-vm-0907, from: b-2025-120{"}"}
              - {"{"}position: roller-2-gear, part: gear-os-0432, from: 2026-11-17-ferry-lane-q8d2, orientation: {"{"}hub: outboard{"}"}{"}"}
            outcome: running

            """, _shop.Read(repair));
        Assert.Equal($"""
            bag: {bagId}
            part: brg-os-1303
            quantity: 1
            grade: runner
            bin: B9
            from: folder-1
            position: {Front}
            sheets: 1304000
            date: 2026-11-25

            """, _shop.Read(bag));
        Assert.Contains((string)json["after"]![0]!["standing"]!, "seated", StringComparison.Ordinal);
        Assert.Contains("CR0803", json["diagnostics"]!.ToJsonString(), StringComparison.Ordinal); // the order has not come
        var house = _shop.Run("fits", Front, "--json").Json["candidates"]!.AsArray();
        Assert.Contains(house, c => c!["inHouse"]!.AsArray().Any(i => (string?)i!["bag"] == bagId));
        Assert.Contains(house, c => c!["inHouse"]!.AsArray().Any(i => (string?)i!["bag"] == "b-2025-120" && (int)i["quantity"]! == 1));
    }

    [Theory]
    [InlineData("grade=core,bin=A2", "quantity: 1 grade: core bin: A2|quantity: 1 grade: runner bin: A1")]
    [InlineData("grade=runner,bin=A1", "quantity: 2 grade: runner bin: A1")]
    public void Two_pieces_of_one_position_are_both_in_a_bag(string second, string bags)
    {
        const string Removed = "roller-2-bearing-front=OS-1303-01,to=bag,quantity=1,";
        var json = _shop.Run("record", "repair", "--machine", "folder-1", "--removed", Removed + "grade=runner,bin=A1", "--removed", Removed + second, "--json").Json;
        var texts = json["also"]!.AsArray().Select(b => string.Join(' ', _shop.Read((string)b!["file"]!).Split('\n')[2..5])).Order(StringComparer.Ordinal);
        Assert.Equal(bags, string.Join('|', texts));
        Assert.All(json["also"]!.AsArray(), b => Assert.Contains((string)b!["id"]!, (string)json["text"]!, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_repair_twice_is_one_repair()
    {
        Repair();
        var before = _shop.Files;
        Assert.Contains("is on record already", Repair().Output, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void A_swap_moves_the_units()
    {
        var run = _shop.Run("record", "repair", "--machine", "press-2", "--sheets", "671400", "--swapped", "fixing,out=fixing-60-b,in=fixing-60-a", "--json");
        Assert.Contains("swapped: {assembly: fixing, out: fixing-60-b, in: fixing-60-a}", (string)run.Json["text"]!, StringComparison.Ordinal);
        Assert.Equal(0, (int)_shop.Run("check", "--json").Json["errors"]!);
    }

    [Theory]
    [InlineData(2, "--machine or --unit missing", "--sheets", "5")]
    [InlineData(2, "nothing says what was found or done", "--machine", "folder-1", "--by", "M. Orr")]
    [InlineData(2, "Did you mean from?", "--machine", "folder-1", "--fitted", "roller-2-bearing-front=VM-0907,form=b-2025-120")]
    [InlineData(2, "Add to=bag", "--machine", "folder-1", "--removed", "roller-2-gear=gear-os-0432,grade=runner")]
    [InlineData(2, "only the assembly comes first", "--machine", "press-2", "--swapped", "fixing=fixing-60-a")]
    [InlineData(2, "One repair changes one unit", "--machine", "press-2", "--swapped", "fixing,in=fixing-60-a", "--swapped", "fixing,in=fixing-60-b")]
    [InlineData(2, "b-2025-112 was filled on 2025-10-20", "--machine", "press-1", "--removed", "fixing/pressure-bearing-front=TO4-1020.01,to=b-2025-112")]
    [InlineData(2, "creaser-1 counts cycles, not sheets", "--machine", "creaser-1", "--sheets", "177000", "--found", "rule=ok")]
    [InlineData(1, "'orientation' must be", "--machine", "folder-1", "--fitted", "roller-2-gear=gear-os-0432,orientation=outboard")]
    [InlineData(1, "2 left in it", "--machine", "folder-1", "--fitted", "roller-2-bearing-front=VM-0907,from=b-2025-120,quantity=5")]
    [InlineData(1, "its orientation is not noted", "--machine", "folder-1", "--fitted", "roller-2-gear=gear-os-0432")]
    [InlineData(1, "but 1,303,300 sheets already", "--machine", "folder-1", "--sheets", "1000")]
    [InlineData(1, "has no 'condition'", "--machine", "folder-1", "--found", "roller-2-gear")]
    [InlineData(1, "has no 'grade'", "--machine", "folder-1", "--removed", "roller-2-gear=gear-os-0432,to=bag")]
    public void What_is_wrong_is_said_and_nothing_is_written(int exitCode, string text, params string[] flags)
    {
        var before = _shop.Files;
        var run = _shop.Run(["record", "repair", .. flags]);
        Assert.Equal((exitCode, ""), (run.ExitCode, run.Output));
        Assert.Contains(text, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Files);
    }

    [Fact]
    public void A_bag_that_was_filled_for_this_repair_may_be_named()
    {
        _shop.Write("shop/new.yaml", "bag: by-hand\npart: brg-ta-4120\nquantity: 1\ngrade: runner\ndate: 2026-11-25\n");
        var run = _shop.Run("record", "repair", "--machine", "press-1", "--removed", "fixing/pressure-bearing-front=TO4-1020.01,to=by-hand", "--json");
        Assert.Contains("to: by-hand", (string)run.Json["text"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_counter_may_be_noted_once_it_is_among_the_readings()
    {
        _shop.Write("shop/new.yaml", "machine: folder-9\nfamily: ostrin-f2\nreadings: [{date: 2026-10-01, hours: 40}, {date: 2026-10-01, sheets: 900000}]\n");
        Assert.Contains("What does its counter say now, in sheets? Last known: 900,000 sheets", _shop.AtKeyboard(["folder-9"], "record", "repair").Error, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Run("recheck", "folder-9", "--hours", "60").ExitCode);
        Assert.Contains("folder-9 counts hours and sheets, not cycles.", _shop.Run("recheck", "folder-9", "--cycles", "60").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_came_out_is_shown_with_its_standing_and_nothing_else()
    {
        var run = _shop.Run("record", "repair", "--machine", "folder-1", "--sheets", "1304100", "--found", "roller-2-bearing-rear=seized", "--removed", "roller-2-bearing-rear=VM-0907,to=scrap");
        Assert.Contains("roller-2-bearing-rear in folder-1: proven, accepted → ran, accepted\n", run.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.DoesNotContain("roller-2-bearing-front", run.Output, StringComparison.Ordinal);
        Assert.Contains("roller-2-bearing-front in folder-1: stays documented, accepted", _shop.Run("recheck", "folder-1", "--sheets", "1304200").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_later_counter_counts_for_what_was_fitted()
    {
        Repair();
        var run = _shop.Run("recheck", "folder-1", "--sheets", "1316000", "--neighbours", "undamaged", "--date", "2026-12-20");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains($"at {Front} in folder-1: seated, accepted → ran, accepted", run.Output, StringComparison.Ordinal);
        Assert.Contains("12,000 sheets", run.Output, StringComparison.Ordinal);
        Assert.Single(_shop.Files.Keys, f => f.StartsWith("repairs/2026-12-20-ferry-lane-", StringComparison.Ordinal));
    }

    [Fact]
    public void Damaged_neighbours_take_a_proof_away()
    {
        var run = _shop.Run("recheck", "folder-1", "--sheets", "1310000", "--neighbours", "damaged", "--at", "roller-2-bearing-rear", "--by", "M. Orr", "--json");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("withdraws: repair-2026-014/roller-2-bearing-rear", (string)run.Json["also"]![0]!["text"]!, StringComparison.Ordinal);
        Assert.Contains(run.Json["before"]!.AsArray(), s => (string)s!["position"]! == "ostrin-f2/fold-head/roller-2-bearing-rear" && (string)s["standing"]! == "proven");
        Assert.Contains(run.Json["after"]!.AsArray(), s => (string)s!["position"]! == "ostrin-f2/fold-head/roller-2-bearing-rear" && (string)s["standing"]! == "ran");
        Assert.Equal(0, (int)_shop.Run("check", "--json").Json["errors"]!);
    }

    [Theory]
    [InlineData("the counter is missing", "folder-1")]
    [InlineData("There is no machine folder-9", "folder-9", "--sheets", "5")]
    [InlineData("creaser-1 counts cycles, not sheets", "creaser-1", "--sheets", "177000")]
    [InlineData("Name its position: --at", "folder-1", "--sheets", "1310000", "--neighbours", "damaged")]
    [InlineData("No part is known to run at", "folder-1", "--sheets", "1310000", "--neighbours", "damaged", "--at", "roller-1-gear")]
    public void A_recheck_says_what_it_lacks(string text, params string[] arguments)
    {
        var run = _shop.Run(["recheck", .. arguments]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(text, run.Error, StringComparison.Ordinal);
    }

    private ToolRun Repair(params string[] more) => _shop.Run(
    [
        "record", "repair", "--machine", "folder-1", "--sheets", "1304000", "--symptom", "squeal", "--assembly", "fold-head", "--by", "M. Orr", "--outcome", "running",
        "--found", "roller-2-bearing-front=dry,note=a, trace: of rust", "--removed", "roller-2-bearing-front=OS-1303-01,to=bag,grade=runner,bin=B9",
        "--fitted", "roller-2-bearing-front=VM-0907,from=b-2025-120", "--fitted", "roller-2-gear=gear-os-0432,from=2026-11-17-ferry-lane-q8d2,orientation=hub:outboard", .. more,
    ]);
}

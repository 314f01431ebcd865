namespace Crossref.Cli.Tests;

/// <summary>What somebody types on the questions of a repair, and the flags that say the same.</summary>
internal static class TypedRepairs
{
    private const string Order = "2026-11-17-ferry-lane-q8d2";
    private static readonly string[] Folder = ["--machine", "folder-1", "--sheets", "1304000", "--symptom", "squeal", "--assembly", "fold-head", "--outcome", "running", "--by", "M. Orr"];
    private static readonly string[] FrontBearing =
    [
        "--found", "roller-2-bearing-front=dry,note=a trace: of rust", "--removed", "roller-2-bearing-front=OS-1303-01,to=bag,grade=runner,bin=B9,defect=dry",
        "--fitted", "roller-2-bearing-front=VM-0907,from=b-2025-120",
    ];

    internal static IReadOnlyDictionary<string, (string[] Typed, string[] Flags)> All { get; } = new Dictionary<string, (string[], string[])>
    {
        ["from a bag, the old one into a new bag"] = (
            ["folder-1", "1 304 000", "squeal", "fold-head", "roller-2-bearing-front", "dry, a trace: of rust", "bag", "", "", "B9", "", "VM-0907", "b-2025-120", "", "", "", ""],
            [.. Folder, .. FrontBearing]),
        ["the same by numbers from the lists"] = (
            ["2", "1304000", "1", "1", "3", "dry, a trace: of rust", "3", "1", "3", "B9", "", "b-2025-120", "1", "no", "1", "1", "-"],
            [.. Folder, .. FrontBearing]),
        ["going back, through a place and out of it"] = (
            [
                "folder-2", "", "folder-1", "1304000", "knock-each-turn", "back", "1", "feed", "suction-belt", "", "", "fold-head",
                "roller-2-bearing-front", "worn", "scrap", "", "-", "back", "back", "back", "back", "dry, a trace: of rust", "bag", "", "core", "back", "runner", "B9", "",
                "VM-0907", "b-2025-120", "roller-2-gear", "ok", "back", "back", "back", "new", "back", "b-2025-120", "", "waiting", "back", "", "R. Finch", "back", "", "",
            ],
            [.. Folder, .. FrontBearing]),
        ["a piece from a unit, handed, two places, one only looked at"] = (
            [
                "press-1", "-", "rubs-off-one-side", "fixing", "sleeve-rear", "oval", "", "", "TO4-1014.03 from unit", "1", "", "heat-roller", "ok", "",
                "sleeve-front", "-", "", "", "TO4-1014.03", "fixing-60-a", "inboard", "", "", "", "Both sleeves, for once.",
            ],
            [
                "--machine", "press-1", "--symptom", "rubs-off-one-side", "--assembly", "fixing", "--outcome", "running", "--by", "M. Orr", "--note", "Both sleeves, for once.",
                "--found", "sleeve-rear=oval", "--found", "heat-roller=ok", "--removed", "sleeve-rear=VM.0906-L,to=scrap", "--removed", "sleeve-front=TO4-1014.03,to=scrap",
                "--fitted", "sleeve-rear=TO4-1014.03,from=fixing-60-a,orientation=rib:outboard", "--fitted", "sleeve-front=TO4-1014.03,from=fixing-60-a,orientation=rib:inboard",
            ]),
        ["a change that the leading statement carries"] = (
            ["press-1", "1280000", "-", "fixing", "sleeve-rear", "cracked", "scrap", "", "VM.0906-L", "b-2024-041", "", "", "", "", "", ""],
            [
                "--machine", "press-1", "--sheets", "1280000", "--assembly", "fixing", "--outcome", "running", "--by", "M. Orr", "--found", "sleeve-rear=cracked",
                "--removed", "sleeve-rear=VM.0906-L,to=scrap", "--fitted", "sleeve-rear=VM.0906-L,from=b-2024-041,orientation=rib:outboard,change=faced to 11.0 mm long",
            ]),
        ["a swap of a whole unit"] = (
            ["press-2", "671400", "1", "fixing", "lamp-edge", "broken", "stays", "whole-unit", "", "", "", "", "", ""],
            [
                "--machine", "press-2", "--sheets", "671400", "--symptom", "warm-up-fault", "--assembly", "fixing", "--outcome", "running", "--by", "M. Orr",
                "--found", "lamp-edge=broken", "--swapped", "fixing,out=fixing-60-b,in=fixing-60-a",
            ]),
        ["an order for an empty place of a unit on the bench"] = (
            ["spare-fold-head", "-", "roller-2-gear", "-", "", "3", "", "", "", "R. Finch", ""],
            ["--unit", "spare-fold-head", "--outcome", "running", "--by", "R. Finch", "--fitted", $"roller-2-gear=OS-0432-01,from={Order},orientation=hub:outboard"]),
        ["some of several, and a place of another assembly"] = (
            ["press-2", "-", "-", "fixing", "claw", "worn", "scrap", "2", "", "1", "feed/feed-roller", "glazed", "scrap", "", "-", "", "", "J. Assad", ""],
            [
                "--machine", "press-2", "--assembly", "fixing", "--outcome", "waiting", "--by", "J. Assad", "--found", "claw=worn", "--found", "feed/feed-roller=glazed",
                "--removed", "claw=TI6-1040.01,to=scrap,quantity=2", "--removed", "feed/feed-roller=TI6-2203.01,to=scrap", "--fitted", "claw=TI6-1040.01,from=b-2026-030,quantity=2",
            ]),
        ["nothing opened"] = (
            ["creaser-1", "177000", "-", "-", "not-solved", "-", "Noise only in the morning, gone by ten."],
            ["--machine", "creaser-1", "--cycles", "177000", "--outcome", "not-solved", "--note", "Noise only in the morning, gone by ten."]),
    };
}

using Crossref.Core.Quantities;
using Crossref.Core.Records;
using Crossref.Site.Reading;

namespace Crossref.Site.Tests.Reading;

/// <summary>One full example of every record, and what it becomes.</summary>
public sealed class MappingTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly Library _library;

    public MappingTests()
    {
        _folder.Lay(Path.Combine(Repository.SiteTests, "Full"), (_, bytes) => bytes);
        _library = ContentReader.Read(_folder.Path).Library!;
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_full_example_has_no_mistake() => Assert.Equal("", Fixture.Diagnostics(_folder.Path));

    [Fact]
    public void Library()
    {
        var card = _library.Card;
        Assert.Equal(("ferry-lane", "Ferry Lane Print Room", 230m, true, Basis.Ran), (card.Id, card.Title, card.Mains, card.Inches, card.AcceptFrom));
        Assert.Equal(new Proving(20_000, 200, 0.4m, 50), card.Proving);
        Assert.Equal(["f2-parts-list"], card.Confirmed.Select(r => r.Id));
    }

    [Fact]
    public void Family_with_assemblies_and_positions()
    {
        var family = _library.Families["ostrin-f2"];
        Assert.Equal([new Model("F2", 230), new Model("F2S", 230), new Model("F2U", 120), new Model("F2X", null)], family.Models);
        var head = _library.Assemblies["ostrin-f2/fold-head"];
        Assert.Equal((TimeSpan.FromMinutes(45), "Mind the springs."), (head.Cool, head.Note));
        Assert.Equal(["nip", "mains", "blade"], head.Cautions.Select(c => c.Id));
        Assert.Equal(["4 mm hex key"], head.Tools);
        var p = _library.Positions["ostrin-f2/fold-head/roller-2-bearing-rear"];
        Assert.Equal(("Second fold roller bearing, rear side", "bearing", "fold/roller-bearing", 2), (p.Name, p.Kind.Name, p.Role, p.Quantity));
        Assert.Equal(["brg-os-1203", "brg-os-1303"], p.Listed.Select(l => l.Part.Id));
        Assert.True(p.Listed[1].OnlyIf.SameAs(new Condition { Mains = 120 }));
        Assert.Equal(("f2-parts-list", "p. 31, item 7"), (p.Source?.Id, p.Locator));
        Assert.Equal("inboard", p.Orientation["flange"]);
        Assert.Equal(["ostrin-f2/fold-head/roller-2-gear"], p.DamagesNext.Select(r => r.Id));
        Assert.Equal(["ostrin-f2/feed/sheet-sensor"], p.BreaksWhenOpened.Select(r => r.Id));
        Assert.Equal(new Quantity(24, 0.1m, Dimension.Length), p.Diameter);
        Assert.True(_library.Positions["ostrin-f2/feed/sheet-sensor"].Safety);
        Assert.Equal(new Place("catalogue.yaml", 24, 18), p.Listed[0].Part.Place);
    }

    [Fact]
    public void Part()
    {
        var part = _library.Parts["brg-os-1203"];
        Assert.Equal(("bearing", "Bearing, fold roller", "Ostrin"), (part.Kind.Name, part.Name, part.Maker));
        Assert.Equal(["OS-1203-02", "007"], part.Numbers.Select(n => n.Id));
        Assert.Equal(["OS-1203-01"], part.EarlierNumbers.Select(n => n.Id));
        Assert.Equal(("Velm", "VM-0903", "f2-parts-list"), (part.Also[0].Maker, part.Also[0].Number.Id, part.Also[0].Source?.Id));
        Assert.Equal(["thin bearing"], part.Aliases);
        Assert.Equal(("brg-os-1303", "f2-parts-list", "ISO 54, series I"), (part.SupersededBy?.Id, part.Source?.Id, _library.Parts["gear-left"].Standard));
        Assert.Equal(new Quantity(12, 0, Dimension.Length), part.Sizes["bore"].Quantity);
        Assert.Equal(new Quantity(28.02m, 0.02m, Dimension.Length), part.Sizes["outside"].Quantity);
        Assert.Equal(new Quantity(7.9248m, 0, Dimension.Length), part.Sizes["width"].Quantity);
        Assert.Equal(("2RS", null), (part.Sizes["shields"].Text, part.Sizes["shields"].Quantity));
        Assert.Equal(new Count(400_000, CountUnit.Cycles), part.Life);
        Assert.Equal((4.5m, 3m, true), (part.Price, part.LeadDays, part.Safety));
        var left = _library.Parts["gear-left"];
        Assert.Equal((true, "left", "gear-right"), (left.Handed, left.Hand, left.Mirror?.Id));
        Assert.Equal([("gear-left", 2), ("brg-os-1203", 1)], _library.Parts["kit-1"].Contains.Select(k => (k.Part.Id, k.Quantity)));
    }

    [Fact]
    public void Source()
    {
        var source = _library.Sources["f2-parts-list"];
        Assert.Equal((SourceType.PartsList, "Parts list, F2 and F2S, third issue", new PartialDate(2019, 5, 0), "drawer 2", "Ostrin", true),
            (source.Kind, source.Title, source.Dated, source.Kept, source.By, source.Documents));
    }

    [Fact]
    public void Claim_at_a_position()
    {
        var claim = _library.Claims["2026-02-11-ferry-lane-k3f9"];
        Assert.Equal(("brg-vm-0907", "ostrin-f2/fold-head/roller-2-bearing-rear", Verdict.FitsWithChange, Basis.Ran), (claim.Part.Id, claim.At?.Id, claim.Verdict!.Value, claim.Basis!.Value));
        Assert.Equal(new Count(18_000, CountUnit.Sheets), claim.Run);
        Assert.True(claim.OnlyIf.SameAs(new Condition { Models = ["F2S"], SerialFrom = "2200", SerialTo = "2999", Mains = 230 }));
        Assert.Equal(("collar turned down 0.3 mm", "folder-1", false, "workshop-log", "photo 3", "M. Orr"),
            (claim.Change, claim.Machine?.Id, claim.NeighboursDamaged!.Value, claim.Source?.Id, claim.Locator, claim.By));
        Assert.Equal((new PartialDate(2026, 2, 11), "Runs quieter than the listed one.", "inboard"), (claim.Date, claim.Note, claim.Orientation["flange"]));
        Assert.Equal(("pictures/flange.jpg", "flange against the inner wall"), (claim.Pictures[0].File, claim.Pictures[0].Shows));
    }

    [Fact]
    public void Claims_that_compare_parts_or_withdraw()
    {
        var compare = _library.Claims["2026-02-12-ferry-lane-b2c3"];
        Assert.Equal(("brg-os-1203", "ostrin-f2", true, null), (compare.Replaces?.Id, compare.Where?.Id, compare.BothWays, compare.At?.Id));
        Assert.Null(_library.Claims["2026-02-12-ferry-lane-d4e5"].Where);
        var withdrawal = _library.Claims["2026-03-01-ferry-lane-w1w1"];
        Assert.Equal(("2026-02-11-ferry-lane-k3f9", null, null), (withdrawal.Withdraws?.Id, withdrawal.Verdict, withdrawal.Basis));
        Assert.Equal("repair-2026-014/roller-2-bearing-rear", _library.Claims["2026-03-02-ferry-lane-w2w2"].Withdraws?.Id);
        Assert.Equal("repair-2026-014/fold-head/roller-2-bearing-rear", _library.Claims["2026-03-03-ferry-lane-w3w3"].Withdraws?.Id);
    }

    [Fact]
    public void Machine()
    {
        var machine = _library.Machines["folder-1"];
        Assert.Equal(("ostrin-f2", "F2S", "0022", 240m, "Big folder"), (machine.Family.Id, machine.Model, machine.Serial, machine.Mains, machine.Name));
        Assert.Equal([(new Count(1_198_000, CountUnit.Sheets), null, false), (new Count(5, CountUnit.Hours), "colour", true)], machine.Readings.Select(r => (r.Count, r.Counter, r.Reset)));
    }

    [Fact]
    public void Bag_unit_and_order()
    {
        var bag = _library.Bags["b-2025-117"];
        Assert.Equal(("brg-vm-0907", 2, Grade.PulledRunning, "B4", "folder-1", "VM-0907"), (bag.Part.Id, bag.Quantity, bag.Grade, bag.Bin, bag.From?.Id, bag.Number));
        Assert.Equal(("ostrin-f2/fold-head/roller-2-bearing-rear", new Count(310_000, CountUnit.Sheets), "M. Orr", "slight groove outboard"), (bag.Position?.Id, bag.Counter!.Value, bag.TestedBy, bag.Defect));
        var unit = _library.Units["spare-fold-head"];
        Assert.Equal(("ostrin-f2", "ostrin-f2/fold-head", null, true, "rack 2"), (unit.Family.Id, unit.Assembly.Id, unit.Machine?.Id, unit.BackInService, unit.Bin));
        Assert.Equal(["ostrin-f2/fold-head/roller-2-gear"], unit.Missing.Select(m => m.Id));
        Assert.Equal("folder-1", _library.Units["head-a"].Machine?.Id);
        var order = _library.Orders["2026-02-11-ferry-lane-q8d2"];
        Assert.Equal(("gear-left", 3, "2026-02-11", "2026-02-16", "spare-fold-head", "2026-02-17"),
            (order.Part.Id, order.Quantity, order.Date.ToString(), order.Expected.ToString(), order.For?.Id, order.Received.ToString()));
    }

    [Fact]
    public void Repair_of_a_machine()
    {
        var repair = _library.Repairs["repair-2026-014"];
        Assert.Equal(("folder-1", "2026-02-11", "M. Orr", new Count(1_198_000, CountUnit.Sheets), "squeal"), (repair.Machine?.Id, repair.Date.ToString(), repair.By, repair.Counter!.Value, repair.Symptom?.Id));
        const string rear = "ostrin-f2/fold-head/roller-2-bearing-rear";
        Assert.Equal("ostrin-f2/fold-head", repair.Assembly?.Id);
        Assert.Equal([(rear, "seized", true), ("ostrin-f2/feed/sheet-sensor", "dirty", false)], repair.Found.Select(f => (f.Position.Id, f.Condition, f.Failed)));
        Assert.Equal([(rear, "brg-os-1203", null, "seized", 1)], repair.Removed.Select(r => (r.Position.Id, r.Part.Id, r.To?.Id, r.Condition, r.Quantity!.Value)));
        var fitted = Assert.Single(repair.Fitted);
        Assert.Equal((rear, "brg-vm-0907", "b-2025-117", "inboard", "deburred", 1), (fitted.Position.Id, fitted.Part.Id, fitted.From?.Id, fitted.Orientation["flange"], fitted.Change, fitted.Quantity!.Value));
        Assert.Equal(("ostrin-f2/fold-head", "head-a", "spare-fold-head"), (repair.Swapped!.Assembly.Id, repair.Swapped.Out?.Id, repair.Swapped.In?.Id));
        Assert.Equal((Outcome.Running, false, "All well."), (repair.Outcome!.Value, repair.NeighboursDamaged!.Value, repair.Note));
    }

    [Fact]
    public void Repair_of_a_unit_takes_its_assembly_from_it()
    {
        var repair = _library.Repairs["bench-1"];
        Assert.Equal((null, "spare-fold-head", "ostrin-f2/fold-head"), (repair.Machine?.Id, repair.Unit?.Id, repair.Assembly?.Id));
        Assert.Equal(("ostrin-f2/fold-head/roller-2-gear", null), (repair.Fitted[0].Position.Id, repair.Fitted[0].From?.Id));
    }

    [Fact]
    public void Symptom_question_and_note()
    {
        var symptom = _library.Symptoms["squeal"];
        Assert.Equal(("Squeal", Side.Mechanical), (symptom.Name, symptom.Where));
        Assert.Equal(["fold/roller-bearing", "fold/gear"], symptom.Suspects.Select(s => s.Id));
        Assert.Equal(["Turn by hand with the drive released", "Idle or only when loaded?"], symptom.Checks);
        var question = _library.Questions["later-gear-pin"];
        Assert.Equal(("Does the later gear need the longer pin?", "No.", "workshop-log", false), (question.Asks, question.Answer, question.AnsweredBy?.Id, question.IsOpen));
        Assert.Equal(["ostrin-f2/fold-head/roller-2-gear", "gear-left"], question.About.Select(a => a.Id));
        var note = _library.Notes["on-gears"];
        Assert.Equal(("On gears", 4, new Place("notes/on-gears.md", 1, 1)), (note.Title, note.LinesBefore, note.Place));
        Assert.Equal([("part:gear-left", 6, 5), ("position:ostrin-f2/fold-head/roller-2-gear", 6, 35)], note.Links.Select(l => (l.Id, l.Place.Line, l.Place.Column)));
        Assert.Equal(["pictures/flange.jpg"], note.Pictures.Select(p => p.File));
        Assert.StartsWith("\nSee [the gear]", note.Markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_retired_stays() => Assert.True(_library.Parts["brg-os-1303"].Retired is false && _library.Parts["old-part"].Retired);

    [Fact]
    public void The_inbox_and_hidden_folders_are_left_out() => Assert.DoesNotContain("not-read", _library.Records.Keys);

    [Fact]
    public void Text_of_several_lines_becomes_one_so_that_no_part_of_it_passes_for_a_line_of_its_own()
    {
        _folder.Write("lines.yaml", "part: lines\nkind: other\nname: |\n  Bearing\n\n    brg-9 - documented\nnumbers: [\"OS-1\\t2\"]\nnote: two  spaces stay\n");
        var part = ContentReader.Read(_folder.Path).Library!.Parts["lines"];
        Assert.Equal(("Bearing brg-9 - documented", "OS-1 2", "two  spaces stay"), (part.Name, part.CurrentNumber, part.Note));
    }
}

using Crossref.Core.Arithmetic;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Gears;

/// <summary>What the calculator as a whole must hold to, whatever is written into it.</summary>
public class GearCalculatorTests
{
    // A pair of equal spur gears of which every size is known.
    private static readonly Dictionary<string, string> Twins = new()
    {
        ["teeth"] = "32", ["module"] = "1", ["helix"] = "0", ["hand"] = "none", ["pressure-angle"] = "20", ["face"] = "9", ["bore"] = "10",
        ["with-teeth"] = "32", ["with-module"] = "1", ["with-helix"] = "0", ["with-hand"] = "none", ["with-pressure-angle"] = "20", ["with-face"] = "9", ["with-bore"] = "10",
    };

    // Sizes without a twin within 1 % of them.
    private static readonly (string Name, double Module)[] Alone = [("module 0.3", 0.3), ("module 1", 1), ("module 1.25", 1.25), ("module 3", 3), ("24 DP", 25.4 / 24), ("20 DP", 1.27)];

    [Fact]
    public void A_gear_is_named_again_from_the_tip_that_its_size_gives_it() => Gen.Select(Gen.Int[0, Alone.Length - 1].Select(i => Alone[i]), Gen.Int[8, 150], Gen.Int[0, 30]).Sample((size, teeth, helix) =>
    {
        var tip = size.Module * (teeth / Math.Cos(helix * Math.PI / 180) + 2);
        var working = Run(("teeth", $"{teeth}"), ("tip", Figure.Number(tip, 6)), ("helix", $"{helix}"));
        Assert.Contains($"By its tip diameter this is {size.Name}", working.Answer, StringComparison.Ordinal);
        Assert.Equal(size.Module, (double)working.Sought!.Sizes["module"].Quantity!.Value.Value, 1e-6);
    });

    [Fact]
    public void Two_spans_name_a_shifted_gear_that_its_tip_diameter_hides()
    {
        // The pinion of example G03: module 3, 12 teeth, shifted by 0.6.
        Assert.Equal("unknown", Figured(Run(("teeth", "12"), ("tip", "44.84 +/- 0.02"), ("hand", "none")), "module"));
        var m = 3 * Math.Cos(Math.PI / 9);
        string Span(int k) => Figure.Number(m * (Math.PI * (k - 0.5) + 12 * (Math.Tan(Math.PI / 9) - Math.PI / 9)) + 2 * 0.6 * 3 * Math.Sin(Math.PI / 9), 4) + " +/- 0.005";
        var working = Run(("teeth", "12"), ("tip", "44.84 +/- 0.02"), ("hand", "none"), ("pressure-angle", "20"), ("span", Span(2)), ("span-teeth", "2"), ("next-span", Span(3)));
        Assert.Equal("3 mm", Figured(working, "module"));
        Assert.Contains(working.Cautions, c => c.StartsWith("The tip diameter points to", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_left_out_ends_in_a_yes()
    {
        Assert.Equal(2, Yes(Twins));
        foreach (var name in Twins.Keys.Where(k => k is not ("teeth" or "helix" or "with-helix" or "hand" or "with-hand")))
        {
            var fewer = Twins.Where(t => t.Key != name).ToDictionary();
            Assert.Equal(name.EndsWith("teeth", StringComparison.Ordinal) || name.EndsWith("face", StringComparison.Ordinal) || name.EndsWith("bore", StringComparison.Ordinal) ? 1 : 0, Yes(fewer));
        }
        // Helix angle and hand stand for each other on straight teeth.
        foreach (var prefix in new[] { "", "with-" })
        {
            Assert.Equal(2, Yes(Twins.Where(t => t.Key != prefix + "helix").ToDictionary()));
            Assert.Equal(0, Yes(Twins.Where(t => t.Key != prefix + "helix" && t.Key != prefix + "hand").ToDictionary()));
        }
    }

    [Fact]
    public void A_module_found_on_teeth_of_unknown_helix_is_not_compared()
    {
        var known = Run(("teeth", "32"), ("tip", "34"), ("with-module", "1"), ("hand", "none"));
        var unknown = Run(("teeth", "32"), ("tip", "34"), ("with-module", "1"));
        Assert.Equal("agrees", Figured(known, "mesh, module"));
        Assert.Equal("unknown", Figured(unknown, "mesh, module"));
    }

    [Fact]
    public void What_is_sought_is_what_is_known()
    {
        var sought = Run(("teeth", "32"), ("dp", "32"), ("hand", "none"), ("face", "9 +/- 0.1")).Sought!;
        Assert.Equal("gear", sought.Kind.Name);
        Assert.Equal(["face", "hand", "helix", "module", "teeth"], sought.Sizes.Keys.Order(StringComparer.Ordinal));
        Assert.Equal((0.79375m, 0.1m), (sought.Sizes["module"].Quantity!.Value.Value, sought.Sizes["face"].Quantity!.Value.Uncertainty));
    }

    private static int Yes(IReadOnlyDictionary<string, string> inputs) =>
        Gear.Run(inputs, OnRecord.Nothing).Working!.Answer.Split("yes").Length - 1;

    private static Working Run(params (string Name, string Text)[] inputs) => Gear.Run(inputs.ToDictionary(i => i.Name, i => i.Text), OnRecord.Nothing).Working!;

    private static string Figured(Working working, string what) => working.Lines.Single(l => l.What == what).Figure;

    private static Calculator Gear => Calculators.All.Single(c => c.Name == "gear");
}

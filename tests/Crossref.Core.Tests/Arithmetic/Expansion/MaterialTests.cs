using Crossref.Core.Arithmetic;
using Crossref.Core.Arithmetic.Expansion;
using Crossref.Core.Tests.Arithmetic.Reference;
using CsCheck;

namespace Crossref.Core.Tests.Arithmetic.Expansion;

public class MaterialTests
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["PEEK unfilled"] = "peek", ["PI (polyimide)"] = "pi", ["PAI unfilled"] = "pai", ["PPS"] = "pps", ["PTFE virgin"] = "ptfe", ["POM (acetal)"] = "pom",
        ["PA66 unfilled"] = "nylon", ["Phenolic, glass filled"] = "phenolic", ["Bearing steel, hardened (100Cr6 type)"] = "bearing-steel",
        ["Mild steel C 0.12-0.20"] = "steel", ["Medium carbon steel C 0.3-0.5"] = "carbon-steel", ["Stainless 304"] = "stainless-304",
        ["Stainless 440C martensitic"] = "stainless-440c", ["Grey cast iron FC200"] = "cast-iron", ["Aluminium 1100"] = "aluminium-1100",
        ["Aluminium 6061"] = "aluminium", ["Copper"] = "copper", ["Brass (free cutting)"] = "brass", ["Bearing bronze C93200"] = "bronze", ["Fused quartz (lamp tube)"] = "quartz",
    };

    // PTFE passes two transitions first. Steels and cast iron: a second table, seen since, differs from the handbook by grade (1010: 12.2,
    // 1040: 11.2, 1045: 11.6, grey iron: 11.4), and the spread must hold both.
    private static readonly string[] Wider = ["ptfe", "steel", "carbon-steel", "cast-iron"];

    private static readonly Gen<Material> Materials = Gen.Int[0, Material.All.Count - 1].Select(i => Material.All[i]);

    [Fact]
    public void Every_published_material_is_on_record_with_its_spread()
    {
        var rows = ReferenceRow.Read("materials.csv");
        Assert.Equal(Material.All.Select(m => m.Name).Order(), rows.Select(r => Names[r["material"]]).Order());
        foreach (var row in rows)
        {
            var (material, published) = (Material.Find(Names[row["material"]])!, new Interval(row.Number("cte_low_e-6_per_K"), row.Number("cte_high_e-6_per_K")));
            var cold = material.Ranges[0].Coefficient;
            Assert.True(Wider.Contains(material.Name) ? cold.Holds(published) && cold != published : cold == published, $"{cold}: {row}");
            Interval? service = row["cont_temp_low_C"].Length == 0 ? null : new Interval(row.Number("cont_temp_low_C"), row.Number("cont_temp_high_C"));
            Assert.True(material.Service == service, $"{material.Service}: {row}");
        }
    }

    [Fact]
    public void The_ranges_leave_no_gap_and_claim_less_the_hotter_it_is() => Assert.All(Material.All, material =>
    {
        Assert.Equal(0, material.Ranges[0].From);
        foreach (var (one, next) in material.Ranges.Zip(material.Ranges.Skip(1)))
        {
            Assert.Equal(one.To, next.From);
            Assert.True(material.Name == "ptfe" || next.Coefficient.Low == one.Coefficient.Low && next.Coefficient.High > one.Coefficient.High, material.Name);
        }
        Assert.NotEmpty(material.Source);
    });

    [Theory]
    [InlineData("pps", 20, 91)]
    [InlineData("ptfe", 20, 201)]
    [InlineData("steel", -1, 100)]
    [InlineData("steel", 20, 301)]
    public void Where_the_data_does_not_reach_the_growth_is_unknown(string name, double start, double end)
    {
        var material = Material.Find(name)!;
        Assert.Null(material.Strain(start, end));
        Assert.NotNull(material.Strain(Math.Max(start, 0), Math.Min(end, material.Ranges[^1].To)));
    }

    [Fact]
    public void Peek_above_its_transition_is_wider_than_below_and_holds_the_published_figure()
    {
        var peek = Material.Find("peek")!;
        var (below, above) = (peek.Strain(43, 143)!.Value, peek.Strain(143, 243)!.Value);
        Assert.True(above.HalfWidth > 5 * below.HalfWidth);
        Assert.True(above.Holds(108e-6 * 100) && above.Holds(below));
    }

    // A maker's handbook, from memory: 124, 135 and 151 millionths as the mean from 25 °C. Kirby, J. Res. NBS 57 (1956), measured the same way.
    [Theory]
    [InlineData(100, 124)]
    [InlineData(150, 135)]
    [InlineData(200, 151)]
    public void Ptfe_holds_the_means_that_a_maker_prints(double end, double mean) => Assert.True(Material.Find("ptfe")!.Strain(25, end)!.Value.Holds(mean * (end - 25) / 1e6));

    [Theory]
    [InlineData("peek", 204, "yes")]
    [InlineData("peek", 205, "doubtful")]
    [InlineData("peek", 260, "doubtful")]
    [InlineData("peek", 261, "not for this temperature")]
    [InlineData("pom", 190, "not for this temperature")]
    [InlineData("steel", 190, "not on record")]
    public void Service_temperature_is_held_against_what_sources_name(string name, double temperature, string word) =>
        Assert.Equal(word, Material.Find(name)!.Bears(temperature));

    [Fact]
    public void Doubt_about_a_temperature_never_makes_the_growth_narrower() => (
        from material in Materials
        from ends in Gen.Double[5, 75].Array[4]
        from more in Gen.Double[0, 5].Array[4]
        select (material, ends, more)).Sample(x =>
    {
        var start = new Interval(Math.Min(x.ends[0], x.ends[1]), Math.Max(x.ends[0], x.ends[1]));
        var end = new Interval(Math.Min(x.ends[2], x.ends[3]), Math.Max(x.ends[2], x.ends[3]));
        var wider = x.material.Strain(new Interval(start.Low - x.more[0], start.High + x.more[1]), new Interval(end.Low - x.more[2], end.High + x.more[3]))!.Value;
        return wider.Holds(x.material.Strain(start, end)!.Value);
    });

    [Fact]
    public void The_way_back_is_the_way_there() => (from material in Materials from start in Gen.Double[0, 80] from end in Gen.Double[0, 80] select (material, start, end)).Sample(x =>
    {
        var (there, back) = (x.material.Strain(x.start, x.end)!.Value, x.material.Strain(x.end, x.start)!.Value);
        return there.Low == -back.High && there.High == -back.Low;
    });
}

using Crossref.Core.Arithmetic.Gears;
using Crossref.Core.Tests.Arithmetic.Reference;

namespace Crossref.Core.Tests.Arithmetic.Gears;

/// <summary>Works the published examples out with the production formulas; one method for each kind of example.</summary>
internal static class GearExamples
{
    internal static double Work(ReferenceRow row)
    {
        var g = row.Given;
        double Of(params string[] names) => names.Where(g.ContainsKey).Select(n => g[n]).FirstOrDefault();
        var (z, x, beta) = ((int)Of("z"), Of("x", "xn", "xt"), Of("beta"));
        var (m, alpha) = (Of("m", "mn", "mt"), Of("alpha", "alphan", "alphat"));
        var results = row["case"] switch
        {
            "spur_pair" or "spur_pair_a" or "spur_pair_x" or "helical_pair_n" or "helical_pair_a" =>
                Pair(m, alpha, beta, (int)g["z1"], (int)g["z2"], Of("x1", "xn1"), Of("x2", "xn2"), g.TryGetValue("a", out var a) ? a : null),
            "teeth_from_a" => TeethFromDistance(m, Of("a"), Of("i")),
            "chordal_spur" => Chordal(m, alpha, z, z, x, Of("ha"), 1),
            "chordal_helical_n" => Chordal(m, alpha, z, ToothThickness.VirtualTeeth(z, beta), x, Of("ha"), 1),
            "chordal_helical_t" => Chordal(m, alpha, z, ToothThickness.VirtualTeeth(z, beta), x, Of("ha"), Math.Cos(beta * Math.PI / 180)),
            "rack" => new() { ["s"] = ToothThickness.OnReference(m, alpha), ["ha1"] = GearDiameters.Addendum * m },
            "span_spur" or "span_helical_n" => Span(m, alpha, beta, z, x, (int)g["k"]),
            "span_helical_t" => TransverseSpan(m, alpha, beta, z, x, (int)g["k"]),
            "helical_sumx" => ShiftSum(m, Of("alphan"), Of("alphat"), (int)(g["z1"] + g["z2"]), Of("a")),
            "dp_to_module" => Inch(Of("dp")),
            "dp_from_pd" => new() { ["dp"] = DiametralPitch.FromModule(Of("D_in") * 25.4 / Of("N")).Middle },
            "tip" => new() { ["da"] = GearDiameters.Tip(z, m, 0).Middle },
            "module_from_tip" => new() { ["m"] = GearDiameters.ModuleByTip(z, Of("da"), 0).Middle },
            "module_from_tip_shifted" => new() { ["m_apparent"] = GearDiameters.ModuleByTip(z, Of("da"), 0).Middle },
            _ => new Dictionary<string, double>(),
        };
        Assert.True(results.ContainsKey(row["quantity"]), $"nothing works this out: {row}");
        return results[row["quantity"]];
    }

    private static Dictionary<string, double> Pair(double m, double alpha, double beta, int z1, int z2, double x1, double x2, double? distance)
    {
        var transverse = GearAngles.TransversePressureAngle(alpha, beta).Middle;
        var reference = CentreDistance.Reference(z1 + z2, m, beta).Middle;
        var working = distance is { } given
            ? CentreDistance.WorkingAngle(reference, transverse, given)!.Value.Middle
            : CentreDistance.WorkingAngle(alpha, transverse, x1 + x2, z1 + z2);
        var a = distance ?? CentreDistance.Working(reference, transverse, working).Middle;
        var y = (a - reference) / m;
        var k = y - (x1 + x2);
        var found = new Dictionary<string, double>
        {
            ["mt"] = GearAngles.TransverseModule(m, beta).Middle,
            ["alphat"] = transverse,
            ["a0"] = reference,
            ["a"] = a,
            ["y"] = y,
            ["k"] = k,
            ["sumx"] = CentreDistance.BothShifts(alpha, transverse, working, z1 + z2).Middle,
            ["inv_alpha"] = Involute.Of(transverse),
        };
        foreach (var name in new[] { "alphaw", "alphawt" }) (found[name], found["inv_" + name]) = (working, Involute.Of(working));
        foreach (var (i, z, x) in new[] { (1, z1, x1), (2, z2, x2) })
        {
            found["d" + i] = GearDiameters.Reference(z, m, beta).Middle;
            found["db" + i] = GearDiameters.Base(z, m, alpha, beta).Middle;
            found["dw" + i] = CentreDistance.WorkingDiameter(a, z, z1 + z2).Middle;
            found["da" + i] = GearDiameters.Tip(z, m, beta, x, k).Middle;
            found["df" + i] = GearDiameters.Root(z, m, beta, x).Middle;
            found["ha" + i] = (found["da" + i] - found["d" + i]) / 2;
            found["sn" + i] = ToothThickness.OnReference(m, alpha, x);
        }
        found["h"] = (found["da1"] - found["df1"]) / 2;
        return found;
    }

    // 2 a / m is what the module by the distance would be if the two had one tooth together, over the module.
    private static Dictionary<string, double> TeethFromDistance(double m, double a, double ratio)
    {
        var sum = CentreDistance.ModuleByDistance(a, 1, 0).Middle / m;
        return new() { ["zsum"] = sum, ["z1"] = ratio * sum / (ratio + 1), ["z2"] = sum / (ratio + 1) };
    }

    private static Dictionary<string, double> Chordal(double m, double alpha, int z, double virtualTeeth, double x, double addendum, double toNormal)
    {
        var half = ToothThickness.HalfAngle(virtualTeeth, alpha, x);
        var thickness = ToothThickness.OnReference(m, alpha, x) * toNormal;
        return new()
        {
            ["s"] = thickness,
            ["sn"] = thickness,
            ["zv"] = virtualTeeth,
            ["theta"] = half,
            ["sj"] = ToothThickness.Chord(virtualTeeth, m, half),
            ["hj"] = ToothThickness.ChordalHeight(virtualTeeth, m, half, addendum),
        };
    }

    private static Dictionary<string, double> Span(double m, double alpha, double beta, int z, double x, int k)
    {
        var (span, around) = (BaseTangent.Length(z, k, m, alpha, beta, x).Middle, GearDiameters.Base(z, m, alpha, beta).Middle);
        var transverse = GearAngles.TransversePressureAngle(alpha, beta).Middle;
        return new()
        {
            ["W"] = span,
            ["kth"] = BaseTangent.TeethToSpan(z, alpha, beta, x),
            ["pb"] = BaseTangent.Pitch(m, alpha).Middle,
            ["alphat"] = transverse,
            ["inv_alpha"] = Involute.Of(transverse),
            ["d"] = GearDiameters.Reference(z, m, beta).Middle,
            ["db"] = around,
            ["da"] = GearDiameters.Tip(z, m, beta, x).Middle,
            ["dc"] = Math.Sqrt(around * around + span * span),
        };
    }

    private static Dictionary<string, double> TransverseSpan(double m, double alpha, double beta, int z, double x, int k)
    {
        var normal = GearAngles.NormalPressureAngle(alpha, beta).Middle;
        return new()
        {
            ["W"] = BaseTangent.TransverseLength(z, k, m, alpha, beta, x).Middle,
            ["kth"] = BaseTangent.TeethToSpan(z, normal, beta, x / Math.Cos(beta * Math.PI / 180)),
            ["alphan"] = normal,
        };
    }

    private static Dictionary<string, double> ShiftSum(double m, double alpha, double transverse, int bothTeeth, double a)
    {
        // The example gives both pressure angles; the helix angle follows.
        var beta = Math.Acos(Math.Tan(alpha * Math.PI / 180) / Math.Tan(transverse * Math.PI / 180)) * 180 / Math.PI;
        var reference = CentreDistance.Reference(bothTeeth, m, beta).Middle;
        var working = CentreDistance.WorkingAngle(reference, transverse, a)!.Value.Middle;
        return new()
        {
            ["a0"] = reference,
            ["alphawt"] = working,
            ["inv_alphawt"] = Involute.Of(working),
            ["inv_alphat"] = Involute.Of(transverse),
            ["sumx"] = CentreDistance.BothShifts(alpha, transverse, working, bothTeeth).Middle,
        };
    }

    private static Dictionary<string, double> Inch(double pitch)
    {
        var m = DiametralPitch.ToModule(pitch).Middle;
        return new()
        {
            ["m"] = m,
            ["s"] = ToothThickness.OnReference(m, 20),
            ["pb145"] = BaseTangent.Pitch(m, 14.5).Middle,
            ["pb20"] = BaseTangent.Pitch(m, 20).Middle,
        };
    }
}

using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Core.Arithmetic.Workings;

/// <summary>What was measured of a bearing, against its number and against the table.</summary>
internal static class BearingSizeLines
{
    private const int Shown = 12;

    /// <summary>Holds the piece in hand against the number; gives the answer's sentence, and whether a size differs.</summary>
    internal static string Compare(BearingDesignation bearing, CalculatorInputs inputs, List<WorkingLine> lines, out bool differs)
    {
        var limits = BearingLimits.Of((double)bearing.Bore, (double)bearing.Outside, (double?)bearing.Width);
        var checks = new List<(string Name, SizeCheck Check)>();
        foreach (var (name, allowed) in new[] { ("bore", limits.Bore), ("outside", limits.Outside), ("width", limits.Width) })
        {
            var measured = inputs.Measure(name);
            var check = BearingTolerance.Check(measured, allowed);
            checks.Add((name, check));
            var how = measured is not { } size ? "not measured" : allowed is not { } range ? "the number leaves it open" : $"measured {Figure.Of(size, 3, "mm")}, allowed {Figure.Of(range, 3, "mm")}";
            lines.Add(new($"{name} in hand", check.Differs ? $"differs, {check}" : check.ToString(), how));
        }
        differs = checks.Exists(c => c.Check.Differs);
        var said = new[]
        {
            Said("agrees in", checks, c => c.Agrees), Said("differs in", checks, c => c.Differs), Said("is unknown in", checks, c => !c.Known),
        };
        return $"The piece in hand {string.Join("; ", said.Where(s => s.Length > 0))}.";
    }

    /// <summary>Finds what the piece in hand can be, and what it nearly is; gives the answer's sentence.</summary>
    /// <param name="inputs">What was measured.</param>
    /// <param name="lines">Where the lines go.</param>
    /// <param name="asked">Whether that is the question; else only the lines are wanted.</param>
    internal static string Find(CalculatorInputs inputs, List<WorkingLine> lines, bool asked)
    {
        var matches = BearingMatch.All(inputs.Measure("bore"), inputs.Measure("outside"), inputs.Measure("width"));
        var possible = matches.Where(m => m.Possible).ToList();
        var missing = BearingCalculator.Sizes.Where(s => !inputs.Has(s)).ToList();
        foreach (var match in possible.Take(Shown)) lines.Add(new("can be", match.Row.Names, Describe(match.Row) + (missing.Count == 0 ? "" : $"; {string.Join(", ", missing)} not measured")));
        if (possible.Count > Shown) lines.Add(new("can be", $"{possible.Count - Shown} more", "measure what is missing, or closer"));
        if (possible.Count == 0) lines.Add(new("can be", "nothing in the table", "metric deep groove ball bearings, bores of 3 to 50 mm, limits of ISO 492 class Normal"));
        var near = matches.Where(m => !m.Possible).Take(3).ToList();
        foreach (var match in near) lines.Add(new("near miss", match.Row.Names, $"{Describe(match.Row)}; measured bore {match.Bore}, outside {match.Outside}, width {match.Width}"));
        if (!asked) return "";
        return possible.Count switch
        {
            0 => $"No bearing in the table has these sizes. Nearest: {near[0].Row.Names}.",
            1 => $"It can be {possible[0].Row.Names}, by its sizes.",
            <= Shown => $"By its sizes it can be {string.Join(", ", possible.Select(m => m.Row.Designation))}.",
            _ => $"{possible.Count} bearings in the table can have these sizes. Measure what is missing, or closer.",
        };
    }

    private static string Said(string verb, List<(string Name, SizeCheck Check)> checks, Func<SizeCheck, bool> holds)
    {
        var names = checks.Where(c => holds(c.Check)).Select(c => c.Name).ToList();
        return names.Count == 0 ? "" : $"{verb} {string.Join(", ", names)}";
    }

    private static string Describe(BearingRow row)
    {
        var flanges = BearingTable.Flanges.Where(f => f.Basic == BearingTable.FlangedName(row.Basic) && (f.Form == "both" || f.Form == "shielded" == row.Shielded)).ToList();
        var flange = flanges.Count == 0 ? "" : $"; {flanges[0].Designation} with a flange";
        return $"{Figure.Number((double)row.Bore, 3)} × {Figure.Number((double)row.Outside, 3)} × {Figure.Of((double)row.Width, 3, "mm")}, {row.Form}{flange}";
    }
}

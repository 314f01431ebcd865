using Crossref.Core.Arithmetic.Bearings;

namespace Crossref.Core.Tests.Arithmetic.Bearings;

/// <summary>
/// What must hold in a table of bearings whatever its source: the number writes the bore (DIN 623-1), diameter series rise
/// in their order and with the bore (ISO 15), the flanged twin of another catalogue table and the CAD libraries have the
/// same sizes. Knows nothing of the handbook rows themselves.
/// </summary>
internal static class BearingRules
{
    private const string DiameterSeries = "7890234";

    internal static IEnumerable<string> Broken(IReadOnlyList<BearingRow> rows) =>
        rows.SelectMany(r => One(r, rows)).Concat(ByBore(rows)).Concat(BySeries(rows));

    private static IEnumerable<string> One(BearingRow row, IReadOnlyList<BearingRow> rows)
    {
        var (bore, outside, width) = ((double)row.Bore, (double)row.Outside, (double)row.Width);
        foreach (var name in row.AlsoNamed.Prepend(row.Designation))
            if (Bore(name) != bore) yield return $"{name} writes a bore of {Bore(name)}, the row has {bore}";
        if (row.Designation.StartsWith("MR", StringComparison.Ordinal) && int.Parse(row.Basic[2..^1], null) != outside)
            yield return $"{row.Designation} writes its outside diameter, the row has {outside}";
        if (outside != Math.Floor(outside)) yield return $"{row.Designation}: outside diameters are whole millimetres";
        if (width != Math.Floor(width) && (width * 2 != Math.Floor(width * 2) || width > 3.5)) yield return $"{row.Designation}: widths above 3.5 mm are whole millimetres";
        if (width >= outside - bore || width < (outside - bore) / 5) yield return $"{row.Designation} is out of proportion";
        if (row.Shielded && rows.FirstOrDefault(r => r.Designation == row.Basic) is { } open && (open.Bore != row.Bore || open.Outside != row.Outside || open.Width > row.Width))
            yield return $"{row.Designation} against the open bearing";
        if (BearingReference.Drawn.TryGetValue(row.Designation, out var drawn) && drawn != (bore, outside, width))
            yield return $"{row.Designation} against the CAD libraries: {drawn}";
        foreach (var twin in BearingReference.Flanges.Where(f => Unflanged(f["designation"]) is var name && (name == row.Designation || (f["form"] == "both" && name == row.Basic))))
            if ((BearingReference.Number(twin["d_mm"]), BearingReference.Number(twin["D_mm"]), BearingReference.Number(twin["B_mm"])) != (bore, outside, width))
                yield return $"{row.Designation} against {twin["designation"]}";
    }

    // One bore: the outside diameter rises with the diameter series, and one series has one outside diameter.
    private static IEnumerable<string> ByBore(IReadOnlyList<BearingRow> rows)
    {
        foreach (var bore in rows.Where(InSeries).GroupBy(r => r.Bore))
        {
            var series = bore.GroupBy(r => DiameterSeries.IndexOf(r.Series[1], StringComparison.Ordinal)).OrderBy(s => s.Key).ToList();
            foreach (var several in series.Where(s => s.Select(r => r.Outside).Distinct().Count() > 1)) yield return $"bore {bore.Key}: {several.First().Series} has several outside diameters";
            for (var i = 1; i < series.Count; i++)
                if (series[i - 1].Max(r => r.Outside) >= series[i].Min(r => r.Outside)) yield return $"bore {bore.Key}: {series[i].First().Series} is not larger than {series[i - 1].First().Series}";
            var open = series.Select(s => s.Where(r => !r.Shielded && r.Series[..2] != "00").MaxBy(r => r.Width)).OfType<BearingRow>().ToList();
            for (var i = 1; i < open.Count; i++)
                if (open[i].Width < open[i - 1].Width) yield return $"bore {bore.Key}: {open[i].Designation} is narrower than {open[i - 1].Designation}";
        }
    }

    // One series: outside diameter rises with the bore, the open width never falls. Shielded widths go their own way: 603ZZ has 5 mm, 604ZZ 4 mm.
    private static IEnumerable<string> BySeries(IReadOnlyList<BearingRow> rows)
    {
        foreach (var series in rows.Where(InSeries).GroupBy(r => (r.Series, r.Shielded)))
        {
            var sorted = series.OrderBy(r => r.Bore).ToList();
            for (var i = 1; i < sorted.Count; i++)
                if (sorted[i].Outside <= sorted[i - 1].Outside || (!series.Key.Shielded && sorted[i].Width < sorted[i - 1].Width)) yield return $"{sorted[i].Designation} after {sorted[i - 1].Designation}";
        }
    }

    // 161 has two rows and no pattern; the makers' own metric sizes are in no series.
    private static bool InSeries(BearingRow row) => char.IsAsciiDigit(row.Series[0]) && row.Series != "161";

    private static string Unflanged(string flanged) => flanged[0] == 'M' ? "MR" + flanged[2..] : flanged[1..];

    private static double Bore(string name)
    {
        var number = name.Replace("-2Z", "", StringComparison.Ordinal).Replace("ZZ", "", StringComparison.Ordinal);
        if (number.Contains('/', StringComparison.Ordinal)) return int.Parse(number.Split('/')[1], null);
        if (number.Length == 3 || number[0] == 'M') return number[^1] - '0';
        return number[^2..] switch { "00" => 10, "01" => 12, "02" => 15, "03" => 17, var code => int.Parse(code, null) * 5 };
    }
}

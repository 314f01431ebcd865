using System.Globalization;

namespace Crossref.Core.Arithmetic.Expansion;

/// <summary>A material of sleeves, bushes, shafts and rollers.</summary>
/// <param name="Name">The short name to choose it by: <c>peek</c>.</param>
/// <param name="Label">What it is: "PEEK, unfilled".</param>
/// <param name="Service">The highest temperature for continuous service, from the lowest to the highest that sources name; null when none is on record.</param>
/// <param name="Ranges">Its expansion, rising without gaps; beyond them nothing is known.</param>
/// <param name="Source">Where the figures stand.</param>
/// <param name="Note">What else to know; may be empty.</param>
public sealed record Material(string Name, string Label, Interval? Service, IReadOnlyList<ExpansionRange> Ranges, string Source, string Note)
{
    /// <summary>Every material on record, plastics first.</summary>
    public static IReadOnlyList<Material> All { get; } = Load();

    /// <summary>The material of that short name; null when there is none.</summary>
    public static Material? Find(string name) => All.FirstOrDefault(m => m.Name == name);

    /// <summary>By how much of its size it grows between two temperatures in degrees Celsius; null where the data does not reach.</summary>
    public Interval? Strain(Interval start, Interval end)
    {
        Interval? all = null;
        foreach (var (from, to) in new[] { (start.Low, end.Low), (start.Low, end.High), (start.High, end.Low), (start.High, end.High) })
        {
            if (Strain(from, to) is not { } one) return null;
            all = all is { } known ? new Interval(Math.Min(known.Low, one.Low), Math.Max(known.High, one.High)) : one;
        }
        return all;
    }

    /// <summary>Whether it bears a temperature for good: "yes", "doubtful" between what sources name, "not for this temperature", or "not on record".</summary>
    public string Bears(Interval temperature) =>
        Service is not { } service ? "not on record"
        : temperature.High <= service.Low + 1e-9 ? "yes"
        : temperature.Low > service.High + 1e-9 ? "not for this temperature"
        : "doubtful";

    private Interval? Strain(double from, double to)
    {
        if (from > to) return Strain(to, from) is { } back ? new Interval(-back.High, -back.Low) : null;
        if (from < Ranges[0].From - 1e-9 || to > Ranges[^1].To + 1e-9) return null;
        var (low, high) = (0.0, 0.0);
        foreach (var range in Ranges)
        {
            var length = Math.Min(to, range.To) - Math.Max(from, range.From);
            if (length <= 0) continue;
            low += range.Coefficient.Low * length;
            high += range.Coefficient.High * length;
        }
        return new Interval(low / 1e6, high / 1e6);
    }

    private static List<Material> Load()
    {
        var ranges = EmbeddedTable.Rows("expansion.csv").ToLookup(
            r => r[0], r => new ExpansionRange(Number(r[1]), Number(r[2]), new Interval(Number(r[3]), Number(r[4]))), StringComparer.Ordinal);
        return [.. EmbeddedTable.Rows("materials.csv").Select(r => new Material(
            r[0], r[1], r[2].Length > 0 ? new Interval(Number(r[2]), Number(r[3])) : null, [.. ranges[r[0]]], r[4], r[5]))];
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

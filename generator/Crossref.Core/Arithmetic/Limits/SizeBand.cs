using System.Globalization;

namespace Crossref.Core.Arithmetic.Limits;

/// <summary>One band of nominal sizes of ISO 286-1:2010, with what the standard gives for it. Micrometres; band ends in millimetres.</summary>
/// <param name="Over">The band begins above this size.</param>
/// <param name="UpTo">The largest size that still belongs to it.</param>
/// <param name="Widths">Widths of the grades IT5 to IT11.</param>
/// <param name="Deviations">Fundamental deviations of shafts by their letter, d to p.</param>
/// <param name="Delta5">What the delta rule adds at grade 5; IT4, from which it would follow, is not in the table.</param>
public sealed record SizeBand(double Over, double UpTo, IReadOnlyList<double> Widths, IReadOnlyDictionary<string, double> Deviations, double Delta5)
{
    private const string Letters = "defghkmnp";

    /// <summary>Every band that is known, the smallest sizes first.</summary>
    public static IReadOnlyList<SizeBand> All { get; } = [.. EmbeddedTable.Rows("iso286.csv").Select(Of)];

    /// <summary>The band that a nominal size belongs to: over its lower end, up to and including its upper; null outside the table.</summary>
    public static SizeBand? Find(double nominal) => nominal <= 0 ? null : All.FirstOrDefault(b => nominal <= b.UpTo + 1e-9);

    private static SizeBand Of(IReadOnlyList<string> row)
    {
        var numbers = row.Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToList();
        return new SizeBand(
            numbers[0], numbers[1], numbers[2..9],
            Letters.Select((l, i) => (Letter: l.ToString(), Value: numbers[9 + i])).ToDictionary(d => d.Letter, d => d.Value, StringComparer.Ordinal),
            numbers[9 + Letters.Length]);
    }
}

namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>
/// The bearings that are known by number: metric single-row deep groove ball bearings of 3 to 50 mm bore.
/// Sources stand at the top of <c>bearings.csv</c> and <c>bearing-flanges.csv</c>.
/// </summary>
public static class BearingTable
{
    /// <summary>Every row, smallest bore first within its family.</summary>
    public static IReadOnlyList<BearingRow> Rows { get; } = [.. EmbeddedTable.Rows("bearings.csv").Select(BearingRow.From)];

    /// <summary>Flanges on record; only bores of 5 to 9 mm.</summary>
    public static IReadOnlyList<BearingFlange> Flanges { get; } = [.. EmbeddedTable.Rows("bearing-flanges.csv").Select(BearingFlange.From)];

    /// <summary>Letters that may follow a number, longest first.</summary>
    public static IReadOnlyList<BearingMark> Marks { get; } =
        [.. EmbeddedTable.Rows("bearing-marks.csv").Select(BearingMark.From).OrderByDescending(m => m.Text.Length)];

    // Names without closures. A few rows hold for shields only: their names stand apart.
    private static readonly Dictionary<string, BearingRow> Unshielded = ByName(Rows.Where(r => !r.Shielded));
    private static readonly Dictionary<string, BearingRow> ShieldedOnly = ByName(Rows.Where(r => r.Shielded));

    /// <summary>The open bearing (or the one for every closure) of that number, in either style; null when there is none.</summary>
    public static BearingRow? Open(string number) => Unshielded.GetValueOrDefault(number);

    /// <summary>The bearing with shields on both sides that is listed under that number; null when there is none.</summary>
    public static BearingRow? WithShields(string number) => ShieldedOnly.GetValueOrDefault(number);

    /// <summary>A designation without ZZ or -2Z at its end.</summary>
    internal static string WithoutClosure(string designation) =>
        designation.EndsWith("ZZ", StringComparison.Ordinal) ? designation[..^2]
        : designation.EndsWith("-2Z", StringComparison.Ordinal) ? designation[..^3] : designation;

    /// <summary>The same bearing with a flange: F688 for 688, MF105 for MR105.</summary>
    internal static string FlangedName(string number) => number.StartsWith("MR", StringComparison.Ordinal) ? "MF" + number[2..] : "F" + number;

    private static Dictionary<string, BearingRow> ByName(IEnumerable<BearingRow> rows)
    {
        var names = new Dictionary<string, BearingRow>(StringComparer.Ordinal);
        foreach (var row in rows)
            foreach (var name in row.AlsoNamed.Prepend(row.Designation)) names.TryAdd(WithoutClosure(name), row);
        return names;
    }
}

using System.Globalization;

namespace Crossref.Core.Arithmetic.Lamps;

/// <summary>A nominal supply voltage of the mains, and where a supply of that name may lie.</summary>
/// <param name="Volts">The nominal voltage.</param>
/// <param name="Band">The voltages that the supply may have, in volts.</param>
/// <param name="Source">The standard, or where else the band was read.</param>
public sealed record SupplyVoltage(double Volts, Interval Band, string Source)
{
    /// <summary>Every nominal voltage of the table, the lowest first.</summary>
    public static IReadOnlyList<SupplyVoltage> All { get; } =
        [.. EmbeddedTable.Rows("supply-voltages.csv").Select(r => new SupplyVoltage(Number(r[0]), new Interval(Number(r[1]), Number(r[2])), r[3]))];

    /// <summary>
    /// The nominal voltages that somebody may mean: the one of exactly that figure, else every one whose band holds all of it.
    /// Empty when no supply of the table is near.
    /// </summary>
    public static IReadOnlyList<SupplyVoltage> Meant(Interval written) => Named(written) is { } named ? [named] : [.. All.Where(s => s.Band.Holds(written))];

    /// <summary>The nominal voltage of exactly that figure; null when it is no nominal voltage.</summary>
    public static SupplyVoltage? Named(Interval written) => All.FirstOrDefault(s => s.Volts == written.Low && s.Volts == written.High);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

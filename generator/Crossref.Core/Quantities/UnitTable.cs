namespace Crossref.Core.Quantities;

/// <summary>The units that may be written, the dimension's own unit first. An inch is 25.4 mm exactly (ISO 80000-3, from memory).</summary>
public static class UnitTable
{
    /// <summary>The signs of the units that may be written for a dimension; none for a plain number.</summary>
    public static IEnumerable<string> Symbols(Dimension dimension) => Of(dimension).Select(u => u.Symbol).Where(s => s.Length > 0);

    /// <summary>The units that may be written for a dimension and how many of its own unit each is; the own unit first.</summary>
    public static IEnumerable<(string Symbol, decimal Factor)> Factors(Dimension dimension) => Of(dimension).Select(u => (u.Symbol, u.Factor));

    internal static IReadOnlyList<MeasureUnit> Of(Dimension dimension) => dimension switch
    {
        Dimension.Length => [new("mm", 1), new("cm", 10), new("m", 1000), new("in", 25.4m), new("um", 0.001m), new("µm", 0.001m)],
        Dimension.Temperature => [new("°C", 1), new("C", 1)],
        Dimension.Angle => [new("°", 1), new("deg", 1)],
        Dimension.Voltage => [new("V", 1), new("kV", 1000)],
        Dimension.Power => [new("W", 1), new("kW", 1000)],
        Dimension.Current => [new("A", 1), new("mA", 0.001m)],
        Dimension.Resistance => [new("ohm", 1), new("Ω", 1), new("kohm", 1000), new("kΩ", 1000), new("Mohm", 1_000_000), new("MΩ", 1_000_000)],
        Dimension.Kelvin => [new("K", 1)],
        Dimension.SpringRate => [new("N/mm", 1)],
        Dimension.Torque => [new("Nm", 1), new("N·m", 1), new("Ncm", 0.01m)],
        _ => [new("", 1)],
    };
}

using System.Globalization;

namespace Crossref.Core.Arithmetic.Springs;

/// <summary>A material that springs are wound from.</summary>
/// <param name="Name">The short name to choose it by: <c>music-wire</c>.</param>
/// <param name="Label">What it is.</param>
/// <param name="Shear">Shear modulus at room temperature as sources name it, in gigapascals.</param>
/// <param name="Source">Where the figures stand.</param>
public sealed record SpringWire(string Name, string Label, Interval Shear, string Source)
{
    /// <summary>Every material on record.</summary>
    public static IReadOnlyList<SpringWire> All { get; } = [.. EmbeddedTable.Rows("spring-wires.csv").Select(r =>
        new SpringWire(r[0], r[1], new Interval(double.Parse(r[2], CultureInfo.InvariantCulture), double.Parse(r[3], CultureInfo.InvariantCulture)), r[4]))];

    /// <summary>The material of that short name; null when there is none.</summary>
    public static SpringWire? Find(string name) => All.FirstOrDefault(w => w.Name == name);
}

namespace Crossref.Core.Arithmetic.Expansion;

/// <summary>Growth by heat of parts that are free to grow, each warm through. Common practice, no standard.</summary>
public static class ThermalExpansion
{
    /// <summary>By how much a size grows: size × coefficient × rise, the last two given as the strain. A hole grows like the piece it was cut from.</summary>
    /// <param name="size">Millimetres when cold.</param>
    /// <param name="strain">Coefficient times rise, without a unit.</param>
    public static Interval Growth(Interval size, Interval strain) => size * strain;

    /// <summary>
    /// By how much a gap opens: the hole's growth less the shaft's. With hole and shaft of about one size d this is
    /// d × (outer coefficient − inner coefficient) × rise.
    /// </summary>
    public static Interval GapChange(Interval hole, Interval outerStrain, Interval shaft, Interval innerStrain) =>
        Growth(hole, outerStrain) - Growth(shaft, innerStrain);
}

namespace Crossref.Core.Quantities;

/// <summary>What a quantity measures, and in which unit it is kept.</summary>
public enum Dimension
{
    /// <summary>A plain number.</summary>
    Number,
    /// <summary>Millimetres.</summary>
    Length,
    /// <summary>Degrees Celsius.</summary>
    Temperature,
    /// <summary>Degrees of arc.</summary>
    Angle,
    /// <summary>Volts.</summary>
    Voltage,
    /// <summary>Watts.</summary>
    Power,
    /// <summary>Amperes.</summary>
    Current,
    /// <summary>Ohms.</summary>
    Resistance,
    /// <summary>Kelvin.</summary>
    Kelvin,
    /// <summary>Newtons per millimetre.</summary>
    SpringRate,
    /// <summary>Newton metres.</summary>
    Torque,
}

namespace Crossref.Core.Arithmetic.Limits;

/// <summary>How far a size may lie from its nominal size.</summary>
/// <param name="Lower">Lower limit deviation (EI of a hole, ei of a shaft), in micrometres.</param>
/// <param name="Upper">Upper limit deviation (ES, es), in micrometres.</param>
public readonly record struct LimitDeviation(double Lower, double Upper)
{
    /// <summary>The limits of size at 20 °C (ISO 1), in millimetres.</summary>
    public Interval Limits(double nominal) => new(nominal + Lower / 1000, nominal + Upper / 1000);
}

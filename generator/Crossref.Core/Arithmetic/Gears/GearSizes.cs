namespace Crossref.Core.Arithmetic.Gears;

/// <summary>What is known of a gear; whatever is null is not known.</summary>
public sealed record GearSizes
{
    /// <summary>How many teeth.</summary>
    public int? Teeth { get; init; }
    /// <summary>Normal module in millimetres.</summary>
    public Interval? Module { get; init; }
    /// <summary>Normal pressure angle in degrees.</summary>
    public Interval? PressureAngle { get; init; }
    /// <summary>Helix angle in degrees, without a sign; 0 for straight teeth.</summary>
    public Interval? Helix { get; init; }
    /// <summary>Which way the teeth lean.</summary>
    public Hand? Hand { get; init; }
    /// <summary>Face width in millimetres.</summary>
    public Interval? Face { get; init; }
    /// <summary>Bore in millimetres.</summary>
    public Interval? Bore { get; init; }
}

namespace Crossref.Core.Arithmetic.Gears;

/// <summary>Which way the teeth of a gear lean.</summary>
public enum Hand
{
    /// <summary>Straight teeth.</summary>
    None,
    /// <summary>Seen with the axis upright, the teeth rise to the left.</summary>
    Left,
    /// <summary>Seen with the axis upright, the teeth rise to the right.</summary>
    Right,
}

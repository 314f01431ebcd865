namespace Crossref.Core.Arithmetic.Bearings;

/// <summary>How a measured size stands to its limits.</summary>
/// <param name="Off">Millimetres above the largest size, or below the smallest as a negative figure; 0 within, or not known.</param>
/// <param name="Known">Whether both the size and its limits are known.</param>
public readonly record struct SizeCheck(double Off, bool Known)
{
    /// <summary>Not measured, or without limits: neither agreement nor difference.</summary>
    public static SizeCheck Unknown { get; }

    /// <summary>Known, and possibly within its limits.</summary>
    public bool Agrees => Known && Off == 0;

    /// <summary>Known, and surely outside its limits.</summary>
    public bool Differs => Known && Off != 0;

    /// <summary>"agrees", "0.5 mm over", "0.5 mm under" or "unknown".</summary>
    public override string ToString() => !Known ? "unknown" : Off == 0 ? "agrees" : Figure.Of(Math.Abs(Off), 3, "mm") + (Off > 0 ? " over" : " under");
}

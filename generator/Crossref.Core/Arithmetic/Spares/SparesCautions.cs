namespace Crossref.Core.Arithmetic.Spares;

/// <summary>What misleads who counts spares.</summary>
public static class SparesCautions
{
    /// <summary>In the order in which they matter.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "The sum takes failures to come by chance. Rollers, belts and sleeves wear out: they fall due together, and their counters say when (from memory).",
        "A part that took others with it, and both sides of one shaft, are fitted together: count and keep them by the set (common practice, no source).",
    ];
}

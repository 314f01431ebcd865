namespace Crossref.Core.Arithmetic.Gears;

/// <summary>A tooth size near a module that was measured.</summary>
/// <param name="Size">The size.</param>
/// <param name="Off">By how much what was measured lies above it, in hundredths; below it when negative.</param>
/// <param name="Holds">Whether the measurement holds it, or misses it by no more than <see cref="ToothSizes.Margin"/>.</param>
public sealed record ToothMatch(ToothSize Size, double Off, bool Holds);

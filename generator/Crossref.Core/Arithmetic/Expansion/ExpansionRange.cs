namespace Crossref.Core.Arithmetic.Expansion;

/// <summary>What is known of a material's linear expansion between two temperatures.</summary>
/// <param name="From">Degrees Celsius.</param>
/// <param name="To">Degrees Celsius.</param>
/// <param name="Coefficient">From the lowest to the highest value, in millionths per kelvin.</param>
public sealed record ExpansionRange(double From, double To, Interval Coefficient);

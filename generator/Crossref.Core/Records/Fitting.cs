namespace Crossref.Core.Records;

/// <summary>A part put in.</summary>
/// <param name="Position">The position's address.</param>
/// <param name="Part">What went in.</param>
/// <param name="From">The bag, unit or order it came from; null for new from a supplier, or not stated.</param>
/// <param name="Orientation">Which way round.</param>
/// <param name="Change">What was done to make it fit; null for nothing.</param>
/// <param name="Quantity">How many; null for all of the position.</param>
/// <param name="Place">Where it is written.</param>
public sealed record Fitting(
    Ref Position, Ref Part, Ref? From, IReadOnlyDictionary<string, string> Orientation, string? Change, int? Quantity, Place Place);

namespace Crossref.Core.Records;

/// <summary>A part taken out.</summary>
/// <param name="Position">The position's address.</param>
/// <param name="Part">What came out.</param>
/// <param name="To">A bag or unit it went to; null for scrap.</param>
/// <param name="Condition">In the finder's words; null when not stated.</param>
/// <param name="Quantity">How many; null for all of the position.</param>
public sealed record Removal(Ref Position, Ref Part, Ref? To, string? Condition, int? Quantity);

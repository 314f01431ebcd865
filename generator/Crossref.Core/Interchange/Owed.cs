namespace Crossref.Core.Interchange;

/// <summary>A position of an idle unit that must be filled before the unit runs again.</summary>
/// <param name="Unit">The unit's id.</param>
/// <param name="Position">The empty position's address.</param>
/// <param name="Part">The part that was ordered for it, else the one taken out, else the one the list names for every machine; null when that is not known.</param>
/// <param name="TakenBy">The repair that took it out; null when the unit's record only calls it missing.</param>
/// <param name="Order">An order that will fill it; null when none is on record.</param>
public sealed record Owed(string Unit, string Position, string? Part, string? TakenBy, string? Order);

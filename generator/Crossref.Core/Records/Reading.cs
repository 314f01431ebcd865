namespace Crossref.Core.Records;

/// <summary>One counter reading.</summary>
/// <param name="Date">When it was read.</param>
/// <param name="Count">What the counter showed.</param>
/// <param name="Counter">Which counter; null for the machine's total.</param>
/// <param name="Reset">Whether the counter was set anew to this value at that date.</param>
/// <param name="Place">Where it is written.</param>
public sealed record Reading(PartialDate Date, Count Count, string? Counter, bool Reset, Place Place);

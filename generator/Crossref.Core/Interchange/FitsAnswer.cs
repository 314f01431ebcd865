namespace Crossref.Core.Interchange;

/// <summary>What fits a position, for one machine or for none.</summary>
/// <param name="Position">The position's address.</param>
/// <param name="Machine">The machine's id; null when none was named.</param>
/// <param name="Safety">Whether the position is a safety one.</param>
/// <param name="Candidates">What may go in, best first.</param>
/// <param name="Disputed">Parts of which yes and no are equally strong, by id.</param>
/// <param name="RuledOut">Parts that do not go in, by id.</param>
public sealed record FitsAnswer(
    string Position, string? Machine, bool Safety,
    IReadOnlyList<Candidate> Candidates, IReadOnlyList<Refusal> Disputed, IReadOnlyList<Refusal> RuledOut);

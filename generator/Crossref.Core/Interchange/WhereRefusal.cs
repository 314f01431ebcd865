namespace Crossref.Core.Interchange;

/// <summary>A position at which a part is disputed (else ruled out), and why.</summary>
public sealed record WhereRefusal(string Position, bool Disputed, Refusal Refusal);

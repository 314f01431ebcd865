namespace Crossref.Core.Interchange;

/// <summary>A position that a part fits or may be tried at.</summary>
public sealed record WhereFit(string Position, Candidate Candidate);

namespace Crossref.Core.Evidence;

/// <summary>Where a statement comes from.</summary>
public enum StatementKind
{
    /// <summary>The maker's list names the part for the position.</summary>
    Listing,
    /// <summary>A claim says so.</summary>
    Claim,
    /// <summary>A claim says so about the other direction, and that it holds both ways.</summary>
    Reverse,
    /// <summary>A repair fitted it.</summary>
    Repair,
}

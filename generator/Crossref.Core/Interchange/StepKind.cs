namespace Crossref.Core.Interchange;

/// <summary>How a path of evidence goes from one part to the next.</summary>
public enum StepKind
{
    /// <summary>The maker's list names the part for the position.</summary>
    Listed,
    /// <summary>A claim or a repair puts the part in the position.</summary>
    Claim,
    /// <summary>One part may stand in for another.</summary>
    Substitution,
    /// <summary>The maker sends another part instead.</summary>
    Superseded,
    /// <summary>Both parts stand at another position: worth a try, no answer.</summary>
    SamePosition,
    /// <summary>Every size that decides is known of both parts and agrees: worth a try, no answer.</summary>
    SameSize,
}

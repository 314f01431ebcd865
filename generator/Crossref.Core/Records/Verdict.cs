namespace Crossref.Core.Records;

/// <summary>What a claim says.</summary>
public enum Verdict
{
    /// <summary>Goes in as it is.</summary>
    Fits,
    /// <summary>Goes in after the change that the claim describes.</summary>
    FitsWithChange,
    /// <summary>Does not go in, or must not.</summary>
    DoesNotFit,
}

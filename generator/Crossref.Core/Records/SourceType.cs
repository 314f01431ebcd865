namespace Crossref.Core.Records;

/// <summary>What kind of source something came from.</summary>
public enum SourceType
{
    /// <summary>The maker's list of parts.</summary>
    PartsList,
    /// <summary>The maker's manual.</summary>
    Manual,
    /// <summary>The maker's bulletin.</summary>
    Bulletin,
    /// <summary>Something measured.</summary>
    Measurement,
    /// <summary>A repair, as noted.</summary>
    Repair,
    /// <summary>A seller's offer.</summary>
    Seller,
    /// <summary>A colleague or another person.</summary>
    Person,
    /// <summary>A photograph.</summary>
    Photo,
    /// <summary>A published standard.</summary>
    Standard,
}

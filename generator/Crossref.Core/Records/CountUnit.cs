namespace Crossref.Core.Records;

/// <summary>What a counter or a life counts.</summary>
public enum CountUnit
{
    /// <summary>Sheets of paper.</summary>
    Sheets,
    /// <summary>Machine cycles.</summary>
    Cycles,
    /// <summary>Running hours.</summary>
    Hours,
}

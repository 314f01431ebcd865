namespace Crossref.Core.Records;

/// <summary>How a repair ended.</summary>
public enum Outcome
{
    /// <summary>The machine runs.</summary>
    Running,
    /// <summary>It waits for a part.</summary>
    Waiting,
    /// <summary>The fault is still there.</summary>
    NotSolved,
}

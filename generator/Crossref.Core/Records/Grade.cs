namespace Crossref.Core.Records;

/// <summary>How good a spare is, best first (common practice, no source).</summary>
public enum Grade
{
    /// <summary>Sealed by the maker.</summary>
    NewSealed,
    /// <summary>New, the bag opened.</summary>
    NewOpened,
    /// <summary>Taken out of a running machine.</summary>
    PulledRunning,
    /// <summary>Checked on the bench.</summary>
    BenchChecked,
    /// <summary>Good for one job.</summary>
    Runner,
    /// <summary>For rebuilding only.</summary>
    Core,
    /// <summary>For measuring only.</summary>
    Sample,
}

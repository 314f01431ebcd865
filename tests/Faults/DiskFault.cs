namespace Crossref.Tests.Faults;

/// <summary>What goes wrong with a disk.</summary>
public enum DiskFault
{
    /// <summary>One thing cannot be done, such as on a full disk; what comes later can.</summary>
    Refused,
    /// <summary>The stick is pulled, or the program killed: that thing and all later ones are not done.</summary>
    Pulled,
    /// <summary>The same, but half of what was being written is there.</summary>
    Torn,
    /// <summary>That thing is done, but the program hears of a failure, and all later ones are not done.</summary>
    DoneButFailed,
}

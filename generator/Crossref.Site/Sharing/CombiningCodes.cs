using Crossref.Core.Checking;

namespace Crossref.Site.Sharing;

/// <summary>What can be wrong with a folder that is to be combined with another. Checking one folder alone never says these.</summary>
internal static class CombiningCodes
{
    /// <summary>A file name that not every disk takes.</summary>
    internal static DiagnosticCode BadName { get; } = new("CR1111", Severity.Error, "File name that not every disk takes",
        "On another PC the file would have another name, or be another file.");

    /// <summary>A record that is there twice, or cannot be told from its neighbour.</summary>
    internal static DiagnosticCode Twice { get; } = new("CR1112", Severity.Error, "Record that is there twice",
        "Nobody knows which of the two the other copy's record belongs to.");

    /// <summary>A folder that no library document belongs to.</summary>
    internal static DiagnosticCode NoOwner { get; } = new("CR1113", Severity.Error, "Nobody's folder",
        "Whose records come in decides what they may say here.");

    /// <summary>What earlier states were is not known.</summary>
    internal static DiagnosticCode NoHistory { get; } = new("CR1114", Severity.Warning, "History that cannot be read",
        "Without it nobody knows which of two texts is newer, and both are shown to be chosen from.");
}

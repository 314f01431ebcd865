namespace Crossref.Core.Checking.Codes;

/// <summary>What is left to do after copies of a library were combined.</summary>
public static class SharingCodes
{
    /// <summary>Copies of a record differ, and nobody has chosen yet.</summary>
    public static DiagnosticCode OpenConflict { get; } = new("CR1101", Severity.Warning, "Copies differ",
        "One of several texts is in force only because nobody has said which is right.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } = [OpenConflict];
}

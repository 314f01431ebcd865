namespace Crossref.Core.Checking.Codes;

/// <summary>Why a file in the inbox is not taken in. It stays where it is, and everything else works as without it.</summary>
public static class InboxCodes
{
    /// <summary>A file that holds no findings.</summary>
    public static DiagnosticCode NoFinding { get; } = new("CR1001", Severity.Warning, "Not a file of findings",
        "Whoever laid it here believes that it is in the library; it is not.");

    /// <summary>Something in the file is wrong.</summary>
    public static DiagnosticCode Mistake { get; } = new("CR1002", Severity.Warning, "A mistake in a file of the inbox",
        "A wrong record taken in would stop every answer until somebody mends it.");

    /// <summary>A record of a type that the inbox does not take.</summary>
    public static DiagnosticCode OtherType { get; } = new("CR1003", Severity.Warning, "Not a claim, a repair or a question",
        "What the inbox takes in nobody reads first, so it may add findings but change nothing else.");

    /// <summary>A record of another library.</summary>
    public static DiagnosticCode OtherLibrary { get; } = new("CR1004", Severity.Warning, "Another library's record",
        "Two runs in two shops prove together what two runs in one shop do not; whose finding it is must stay clear.");

    /// <summary>An id that is on record with other content.</summary>
    public static DiagnosticCode OtherContent { get; } = new("CR1005", Severity.Warning, "On record already, and says something else",
        "What was once recorded is never changed; a correction is a new finding beside it.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } = [NoFinding, Mistake, OtherType, OtherLibrary, OtherContent];
}

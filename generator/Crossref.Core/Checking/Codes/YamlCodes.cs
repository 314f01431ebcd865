namespace Crossref.Core.Checking.Codes;

/// <summary>What can be wrong with a document as YAML.</summary>
public static class YamlCodes
{
    /// <summary>The text is not YAML.</summary>
    public static DiagnosticCode Broken { get; } = new("CR0101", Severity.Error, "Broken YAML",
        "Nothing of the document can be trusted once its structure cannot be followed.");

    /// <summary>A tab where spaces belong.</summary>
    public static DiagnosticCode Tab { get; } = new("CR0102", Severity.Error, "Tab in the indentation",
        "YAML is indented with spaces; how wide a tab is depends on who looks.");

    /// <summary>A key is written twice.</summary>
    public static DiagnosticCode RepeatedKey { get; } = new("CR0103", Severity.Error, "Key written twice",
        "Only one of the two values could count, and nobody would know which.");

    /// <summary>An anchor or alias.</summary>
    public static DiagnosticCode Alias { get; } = new("CR0104", Severity.Error, "Anchor or alias",
        "A value that stands somewhere else is read wrongly by people, and a few nested ones unfold without end.");

    /// <summary>A tag.</summary>
    public static DiagnosticCode Tag { get; } = new("CR0105", Severity.Error, "Tag",
        "Every value is text first; the key decides what it means, not a tag.");

    /// <summary>Nested too deep.</summary>
    public static DiagnosticCode TooDeep { get; } = new("CR0106", Severity.Error, "Nested too deep",
        "No record needs more than a few levels; a file that has more was made to do harm.");

    /// <summary>A document is not a map of keys.</summary>
    public static DiagnosticCode NotAMap { get; } = new("CR0107", Severity.Error, "Not a record",
        "A document is a list of keys and values, the first of which says what it is.");

    /// <summary>A key is not plain text.</summary>
    public static DiagnosticCode OddKey { get; } = new("CR0108", Severity.Error, "Key is not a word",
        "Keys are words; lists and maps cannot be looked up.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } = [Broken, Tab, RepeatedKey, Alias, Tag, TooDeep, NotAMap, OddKey];
}

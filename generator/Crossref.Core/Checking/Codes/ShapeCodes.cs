namespace Crossref.Core.Checking.Codes;

/// <summary>What can be wrong with a record's keys and values, one record at a time.</summary>
public static class ShapeCodes
{
    /// <summary>The first key names no type of document.</summary>
    public static DiagnosticCode UnknownType { get; } = new("CR0201", Severity.Error, "Unknown type of document",
        "The first key says what a document is and carries its id.");

    /// <summary>A key that the record does not have.</summary>
    public static DiagnosticCode UnknownKey { get; } = new("CR0202", Severity.Error, "Unknown key",
        "A misspelt key would be a fact that silently counts for nothing.");

    /// <summary>A key that is needed is missing.</summary>
    public static DiagnosticCode MissingKey { get; } = new("CR0203", Severity.Error, "Missing key",
        "Without it the record says nothing that can be used.");

    /// <summary>A list, a map or a single value where another of them belongs.</summary>
    public static DiagnosticCode WrongForm { get; } = new("CR0204", Severity.Error, "Wrong form of value",
        "A list, a map and a single value are told apart, so that one entry never passes for the whole.");

    /// <summary>A word outside the vocabulary.</summary>
    public static DiagnosticCode UnknownWord { get; } = new("CR0205", Severity.Error, "Unknown word",
        "The words of the vocabulary decide what counts; another word would be guessed at.");

    /// <summary>An id that is not one.</summary>
    public static DiagnosticCode BadId { get; } = new("CR0206", Severity.Error, "Not an id",
        "Ids become file names on every system: a-z, 0-9 and single dashes, at most 40 characters.");

    /// <summary>An id that Windows keeps for a device.</summary>
    public static DiagnosticCode DeviceName { get; } = new("CR0207", Severity.Error, "Name of a Windows device",
        "Windows cannot make a file of that name, so the page could not be copied.");

    /// <summary>A quantity that cannot be read.</summary>
    public static DiagnosticCode BadQuantity { get; } = new("CR0208", Severity.Error, "Not a quantity",
        "A size that cannot be read cannot be compared.");

    /// <summary>A decimal comma.</summary>
    public static DiagnosticCode DecimalComma { get; } = new("CR0209", Severity.Error, "Decimal comma",
        "17,02 is seventeen in one country and seventeen hundred and two in another.");

    /// <summary>A number that is not one, or not a whole one.</summary>
    public static DiagnosticCode BadNumber { get; } = new("CR0210", Severity.Error, "Not a number",
        "What is counted or paid must be a plain number.");

    /// <summary>A number outside its range.</summary>
    public static DiagnosticCode OutOfRange { get; } = new("CR0211", Severity.Error, "Number out of range",
        "No such thing exists: a size, a count or a price below zero, a share above one.");

    /// <summary>Neither true nor false.</summary>
    public static DiagnosticCode NotTrueOrFalse { get; } = new("CR0212", Severity.Error, "Neither true nor false",
        "Yes, on and y mean different things to different programs; true and false do not.");

    /// <summary>A date that the calendar does not have.</summary>
    public static DiagnosticCode BadDate { get; } = new("CR0213", Severity.Error, "Not a date",
        "The order of findings decides what counts, and 03/04 is two different days.");

    /// <summary>Exactly one of several keys is wanted.</summary>
    public static DiagnosticCode OneOf { get; } = new("CR0214", Severity.Error, "One of several keys is wanted",
        "With none of them the record speaks of nothing, with two of them of two things at once.");

    /// <summary>A key or value that needs another key.</summary>
    public static DiagnosticCode NeedsKey { get; } = new("CR0215", Severity.Error, "Something needs another key",
        "What is written says too little without it.");

    /// <summary>A basis that is reached, never written.</summary>
    public static DiagnosticCode ProvenWritten { get; } = new("CR0216", Severity.Error, "Proven is never written",
        "It is worked out from runs that lasted, so that nobody can promise it.");

    /// <summary>A key without a value.</summary>
    public static DiagnosticCode NoValue { get; } = new("CR0217", Severity.Error, "Key without a value",
        "Nothing and forgotten look alike.");

    /// <summary>A local position without its assembly.</summary>
    public static DiagnosticCode NoAssembly { get; } = new("CR0218", Severity.Error, "Position without its assembly",
        "The same local name may stand in several assemblies.");

    /// <summary>A caution that has no text.</summary>
    public static DiagnosticCode UnknownCaution { get; } = new("CR0219", Severity.Warning, "Unknown caution",
        "The page shows the word, but has no advice for whoever opens the machine.");

    /// <summary>A size that no kind of part has.</summary>
    public static DiagnosticCode UnknownSize { get; } = new("CR0220", Severity.Error, "Unknown size",
        "A size under an unknown name takes part in no comparison.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } =
    [
        UnknownType, UnknownKey, MissingKey, WrongForm, UnknownWord, BadId, DeviceName, BadQuantity, DecimalComma, BadNumber,
        OutOfRange, NotTrueOrFalse, BadDate, OneOf, NeedsKey, ProvenWritten, NoValue, NoAssembly, UnknownCaution, UnknownSize,
    ];
}

namespace Crossref.Core.Checking.Codes;

/// <summary>What can be wrong with the files of a content folder, before anybody looks at what they say.</summary>
public static class FileCodes
{
    /// <summary>No document says whose library this is.</summary>
    public static DiagnosticCode NoLibrary { get; } = new("CR0001", Severity.Error, "No library document",
        "Every new claim and repair carries the id of the library it was made in, so somebody has to say whose copy this is.");

    /// <summary>More than one document says whose library this is.</summary>
    public static DiagnosticCode SecondLibrary { get; } = new("CR0002", Severity.Error, "More than one library document",
        "A copy has one owner and one set of settings.");

    /// <summary>A file is not UTF-8.</summary>
    public static DiagnosticCode NotUtf8 { get; } = new("CR0003", Severity.Error, "Not UTF-8 text",
        "A guessed character set turns a name or a number into another one without anybody noticing.");

    /// <summary>A file holds a NUL or another control character.</summary>
    public static DiagnosticCode ControlCharacter { get; } = new("CR0004", Severity.Error, "Control character",
        "No text holds one; a file that does was damaged or is not a text file.");

    /// <summary>A file is over 1 MB.</summary>
    public static DiagnosticCode TooLarge { get; } = new("CR0005", Severity.Error, "File too large",
        "Files of records are small; a huge one is a mistake or an attack, and no editor likes it.");

    /// <summary>A link leads out of the folder.</summary>
    public static DiagnosticCode LinkOut { get; } = new("CR0006", Severity.Error, "Link out of the content folder",
        "Content that came on a stick must not draw other files of this PC into the site.");

    /// <summary>A file or folder cannot be read.</summary>
    public static DiagnosticCode Unreadable { get; } = new("CR0007", Severity.Error, "Cannot be read",
        "What is in it is missing from every answer.");

    /// <summary>A character that nobody sees, or that turns the direction of writing.</summary>
    public static DiagnosticCode HiddenCharacter { get; } = new("CR0008", Severity.Error, "Hidden character",
        "Copied text brings one along; with it two numbers that differ look alike, or a number reads backwards.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } =
        [NoLibrary, SecondLibrary, NotUtf8, ControlCharacter, TooLarge, LinkOut, Unreadable, HiddenCharacter];
}

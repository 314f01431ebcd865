namespace Crossref.Core.Checking.Codes;

/// <summary>What can be wrong with notes and pictures.</summary>
public static class NoteCodes
{
    /// <summary>A note without front matter.</summary>
    public static DiagnosticCode NoFrontMatter { get; } = new("CR0301", Severity.Error, "Note without front matter",
        "A note needs a title, and says there what it is about.");

    /// <summary>Raw HTML in a note.</summary>
    public static DiagnosticCode RawHtml { get; } = new("CR0302", Severity.Error, "Raw HTML in a note",
        "Markup from a stick could run in the browser of every PC in the shop.");

    /// <summary>A link that leaves the library.</summary>
    public static DiagnosticCode LinkAway { get; } = new("CR0303", Severity.Error, "Link that leaves the library",
        "The site works without a network and never asks one; a link out of it is dead, or worse.");

    /// <summary>A picture that is not a file of this folder.</summary>
    public static DiagnosticCode PictureAway { get; } = new("CR0304", Severity.Error, "Picture from elsewhere",
        "Only files below the content folder travel with it.");

    /// <summary>A picture that does not exist.</summary>
    public static DiagnosticCode PictureMissing { get; } = new("CR0305", Severity.Error, "Picture missing",
        "Somebody would look for it at the open machine.");

    /// <summary>A picture of a format that is not taken.</summary>
    public static DiagnosticCode PictureFormat { get; } = new("CR0306", Severity.Error, "Format of a picture",
        "Every browser shows png, jpg, webp and gif; an svg can carry scripts.");

    /// <summary>A picture over 1 MB.</summary>
    public static DiagnosticCode PictureLarge { get; } = new("CR0307", Severity.Warning, "Picture over 1 MB",
        "A folder of large photos takes minutes to copy to a stick.");

    /// <summary>A picture that says nothing to whoever cannot see it.</summary>
    public static DiagnosticCode PictureSilent { get; } = new("CR0308", Severity.Error, "Picture without words",
        "In a bad print, or to somebody who cannot see it, the words are the picture.");

    /// <summary>A note whose marks are nested without end, or a paragraph without end.</summary>
    public static DiagnosticCode NoteTooDense { get; } = new("CR0309", Severity.Error, "Note too dense to be read",
        "No note needs more than a few quotes and lists within each other, or pages without a blank line; one that has was made to do harm.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } =
        [NoFrontMatter, RawHtml, LinkAway, PictureAway, PictureMissing, PictureFormat, PictureLarge, PictureSilent, NoteTooDense];
}

using Crossref.Core.Checking;

namespace Crossref.Site.Sheets;

/// <summary>What can be wrong with a sheet, besides what can be wrong with any record.</summary>
public static class SheetCodes
{
    /// <summary>The file is no sheet.</summary>
    public static DiagnosticCode NotASheet { get; } = new("CR1201", Severity.Error, "Not a sheet",
        "A sheet is text, a row a line; everything else has to be saved as one first.");

    /// <summary>Quote marks that do not pair.</summary>
    public static DiagnosticCode Quotes { get; } = new("CR1202", Severity.Error, "Stray quote mark",
        "A quote mark decides where a cell ends; a stray one may swallow the rows behind it.");

    /// <summary>A column is missing, or there are two for the same.</summary>
    public static DiagnosticCode Columns { get; } = new("CR1203", Severity.Error, "Columns do not do",
        "Every row needs what its record cannot do without, once.");

    /// <summary>A row has more cells than the sheet has columns.</summary>
    public static DiagnosticCode LongRow { get; } = new("CR1204", Severity.Error, "Row too long",
        "A separator too many moves every cell behind it into the wrong column.");

    /// <summary>A cell holds a formula.</summary>
    public static DiagnosticCode Formula { get; } = new("CR1205", Severity.Error, "Formula",
        "What a formula gives is not in the file, and one from elsewhere may do harm in a spreadsheet.");

    /// <summary>A spreadsheet has made something else of a text.</summary>
    public static DiagnosticCode Spoiled { get; } = new("CR1206", Severity.Error, "Spoiled by a spreadsheet",
        "What was typed is gone from the file; a guess at it would be a wrong number.");

    /// <summary>Two rows for the same thing.</summary>
    public static DiagnosticCode Repeated { get; } = new("CR1207", Severity.Error, "Row repeated",
        "Nobody can know which of them counts.");

    /// <summary>The library says something else.</summary>
    public static DiagnosticCode OtherValue { get; } = new("CR1208", Severity.Error, "Differs from the library",
        "An import adds and never changes what is on record.");

    /// <summary>Nothing to make an id of.</summary>
    public static DiagnosticCode NoId { get; } = new("CR1209", Severity.Error, "No id",
        "Every record needs an id by which others name it.");

    /// <summary>A number of several parts.</summary>
    public static DiagnosticCode Unclear { get; } = new("CR1210", Severity.Error, "Number of several parts",
        "A bag holds one of them.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DiagnosticCode> All { get; } = [NotASheet, Quotes, Columns, LongRow, Formula, Spoiled, Repeated, OtherValue, NoId, Unclear];
}

using Crossref.Core.Checking;
using Crossref.Core.Storing;

namespace Crossref.Site.Sheets;

/// <summary>What would come of a sheet, before anything is written.</summary>
/// <param name="Kind">What its rows are: parts or bags.</param>
/// <param name="Written">How the sheet is written: character set and separator; null when it could not be read.</param>
/// <param name="Columns">How its columns are read.</param>
/// <param name="Diagnostics">Everything wrong, at its line and column.</param>
/// <param name="New">Ids of what is new.</param>
/// <param name="Known">Ids of what the library says already.</param>
/// <param name="Changes">The files to write; none when something is wrong.</param>
public sealed record ImportPlan(
    string Kind, string? Written, IReadOnlyList<ImportColumn> Columns, IReadOnlyList<Diagnostic> Diagnostics,
    IReadOnlyList<string> New, IReadOnlyList<string> Known, IReadOnlyList<FileChange> Changes)
{
    /// <summary>Whether an error was found, so that nothing may be written.</summary>
    public bool HasErrors => Diagnostics.Any(d => d.Severity == Severity.Error);
}

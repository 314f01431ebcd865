namespace Crossref.Site.Sheets;

/// <summary>A column of somebody's sheet.</summary>
/// <param name="Letter">As a spreadsheet names it.</param>
/// <param name="Heading">What is written above it.</param>
/// <param name="Field">What it is read as; null when it is not used.</param>
public sealed record ImportColumn(string Letter, string Heading, string? Field)
{
    /// <summary>The letters of a column, from 0: A to Z, then AA.</summary>
    internal static string LetterOf(int column) => (column >= 26 ? LetterOf(column / 26 - 1) : "") + (char)('A' + column % 26);
}

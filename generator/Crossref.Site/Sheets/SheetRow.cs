namespace Crossref.Site.Sheets;

/// <summary>A row and the line it begins in.</summary>
internal sealed record SheetRow(int Line, IReadOnlyList<string> Cells)
{
    internal string this[int column] => column < Cells.Count ? Cells[column] : "";
}

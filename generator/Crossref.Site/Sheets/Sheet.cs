using Crossref.Core.Records;

namespace Crossref.Site.Sheets;

/// <summary>A sheet as it was read.</summary>
/// <param name="File">Its name.</param>
/// <param name="Written">How it is written: the character set and the separator, in words.</param>
/// <param name="Headings">The first row.</param>
/// <param name="Rows">The others, the empty ones left out, with their lines.</param>
internal sealed record Sheet(string File, string Written, SheetRow Headings, IReadOnlyList<SheetRow> Rows)
{
    /// <summary>Where a cell stands: its row's line, and the number of its column.</summary>
    internal Place PlaceOf(SheetRow row, int column) => new(File, row.Line, column + 1);
}

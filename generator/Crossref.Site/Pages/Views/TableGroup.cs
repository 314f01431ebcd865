namespace Crossref.Site.Pages.Views;

/// <summary>One table of an overview.</summary>
/// <param name="Id">The id of its heading.</param>
/// <param name="Heading">Its heading; null when it is the only one.</param>
/// <param name="Columns">The column headings.</param>
/// <param name="Rows">The rows.</param>
/// <param name="Nothing">What to say when there are no rows.</param>
public sealed record TableGroup(string Id, string? Heading, IReadOnlyList<string> Columns, IReadOnlyList<TableRow> Rows, string Nothing)
{
    /// <summary>Whether the reader may sort its rows and narrow them down.</summary>
    public bool Sortable { get; init; }
    /// <summary>A class for the look; null for none.</summary>
    public string? Look { get; init; }
}

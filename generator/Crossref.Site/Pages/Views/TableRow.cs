namespace Crossref.Site.Pages.Views;

/// <summary>A row of an overview.</summary>
/// <param name="Anchor">The id of its place on the page; null for none.</param>
/// <param name="Cells">Texts and links, in the order of the columns.</param>
public sealed record TableRow(string? Anchor, IReadOnlyList<object?> Cells)
{
    /// <summary>What cells are sorted by, where that is not their text: numbers, in the order of the columns. Empty for texts throughout.</summary>
    public IReadOnlyList<int?> Keys { get; init; } = [];
}

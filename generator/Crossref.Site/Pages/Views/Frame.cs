namespace Crossref.Site.Pages.Views;

/// <summary>What every page has around its own content.</summary>
public sealed record Frame
{
    /// <summary>The template of this kind of page.</summary>
    public required string Template { get; init; }
    /// <summary>The page's title and first heading.</summary>
    public required string Title { get; init; }
    /// <summary>What kind of page it is, in a word or two.</summary>
    public required string Kind { get; init; }
    /// <summary>The sheet's reference in the title block, such as the address of a position.</summary>
    public required string Reference { get; init; }
    /// <summary>From this page to the site's root: empty, or one or more <c>../</c>.</summary>
    public required string Root { get; init; }
    /// <summary>The library's title.</summary>
    public required string Library { get; init; }
    /// <summary>The library's id, which keeps what browsers store for it apart from other libraries.</summary>
    public required string LibraryId { get; init; }
    /// <summary>The day the pages speak of.</summary>
    public required string Date { get; init; }
    /// <summary>Scripts that only this kind of page loads, after those that every page does.</summary>
    public required IReadOnlyList<string> Scripts { get; init; }
    /// <summary>The way to this page from the first one.</summary>
    public required IReadOnlyList<Link> Crumbs { get; init; }
    /// <summary>The overviews one goes to most.</summary>
    public required IReadOnlyList<Link> Menu { get; init; }
    /// <summary>The other overviews.</summary>
    public required IReadOnlyList<Link> More { get; init; }
}
